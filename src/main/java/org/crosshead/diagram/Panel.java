package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * The piece of a strip that one panel shows.
 *
 * @param scales the same in all panels of the strip
 */
record Panel(StripModel model, PanelFormat format, Scales scales, double fromM, double toM) {

    private static final double TOLERANCE_M = 0.5;

    /** Returns pixels from the left of the plot. */
    double x(double positionM) {
        return (positionM - fromM) / (toM - fromM) * format.plotPx();
    }

    /** Returns the position cut to the panel. */
    double within(double positionM) {
        return Math.min(Math.max(positionM, fromM), toM);
    }

    /** Says whether a length, or a place where both ends are the same, shows here. What stands on a break shows once. */
    boolean shows(double lengthFromM, double lengthToM) {
        if (lengthFromM == lengthToM) {
            boolean last = toM >= model.lengthM() - TOLERANCE_M;
            return lengthFromM >= fromM && (lengthFromM < toM || (last && lengthFromM <= toM));
        }
        return lengthToM > fromM && lengthFromM < toM;
    }

    /** Places stand at both sides of a break, for a panel ends at a station where it can. */
    boolean showsPlace(double positionM) {
        return positionM >= fromM - TOLERANCE_M && positionM <= toM + TOLERANCE_M;
    }

    /** Returns a line of the forecast over this panel, its ends cut to it, with its values as they are. */
    Polyline run(List<Double> values) {
        return along(model.run().positionM(), values);
    }

    /** Returns a line over this panel, its ends cut to it. */
    Polyline along(List<Double> positions, List<Double> values) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        Polyline whole = new Polyline(positions, values);
        addEnd(whole, fromM, x, y);
        for (int i = 0; i < positions.size(); i++) {
            if (positions.get(i) > fromM
                    && positions.get(i) < toM
                    && !values.get(i).isNaN()) {
                x.add(x(positions.get(i)));
                y.add(values.get(i));
            }
        }
        addEnd(whole, toM, x, y);
        return new Polyline(x, y);
    }

    private void addEnd(Polyline whole, double positionM, List<Double> x, List<Double> y) {
        double value = whole.yAt(positionM);
        if (!Double.isNaN(value)) {
            x.add(x(positionM));
            y.add(value);
        }
    }
}
