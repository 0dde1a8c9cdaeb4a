package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.crosshead.diagram.StripModel.Point;

/**
 * Spreads the numbered points of a panel over rows, so that each can be tapped: their middles are 24 px apart, and each is
 * as near to its place as the others let it be.
 */
final class PointRows {

    static final double RADIUS_PX = 10;
    static final double PITCH_PX = 24;
    private static final double SHIFT_MOST_PX = 30;
    private static final int ROWS_MOST = 4;

    private PointRows() {}

    /** A point, where its place is and where it is drawn. */
    record Spread(Point point, double placeX, double x, int row) {}

    /** Returns how many rows the panel's points need. */
    static int needed(Panel panel, boolean forFireman) {
        List<Point> points = shown(panel, forFireman);
        for (int rows = 1; rows < ROWS_MOST; rows++) {
            boolean near = spread(panel, points, rows).stream()
                    .allMatch(spread -> Math.abs(spread.x() - spread.placeX()) <= SHIFT_MOST_PX);
            if (near) {
                return rows;
            }
        }
        return ROWS_MOST;
    }

    static List<Spread> spread(Panel panel, boolean forFireman, int rows) {
        return spread(panel, shown(panel, forFireman), rows);
    }

    private static List<Point> shown(Panel panel, boolean forFireman) {
        return panel.model().points().stream()
                .filter(point -> point.forFireman() == forFireman)
                .filter(point -> panel.shows(point.positionM(), point.positionM()))
                .sorted(Comparator.comparingDouble(Point::positionM))
                .toList();
    }

    private static List<Spread> spread(Panel panel, List<Point> points, int rows) {
        List<Spread> spreads = new ArrayList<>();
        List<List<Point>> dealtRows = deal(panel, points, rows);
        for (int row = 0; row < rows; row++) {
            List<Point> dealt = dealtRows.get(row);
            double[] placeX =
                    dealt.stream().mapToDouble(p -> panel.x(p.positionM())).toArray();
            double[] x = apart(placeX, panel.format().plotPx());
            for (int i = 0; i < x.length; i++) {
                spreads.add(new Spread(dealt.get(i), placeX[i], x[i], row));
            }
        }
        return spreads;
    }

    /** Deals the points to the rows: each to the first where it may stand at its place, else to where it is moved least. */
    private static List<List<Point>> deal(Panel panel, List<Point> points, int rows) {
        List<List<Point>> dealt = new ArrayList<>();
        double[] freeFromX = new double[rows];
        for (int row = 0; row < rows; row++) {
            dealt.add(new ArrayList<>());
        }
        for (Point point : points) {
            double x = Math.max(panel.x(point.positionM()), RADIUS_PX);
            int best = 0;
            for (int row = 1; row < rows && freeFromX[best] > x; row++) {
                best = freeFromX[row] < freeFromX[best] ? row : best;
            }
            dealt.get(best).add(point);
            freeFromX[best] = Math.max(freeFromX[best], x) + PITCH_PX;
        }
        return dealt;
    }

    /**
     * Returns the nearest rising places that are a pitch apart, in the sense of least squares (pools of neighbours), kept
     * inside the lane; closer where more of them stand in a row than the lane holds.
     */
    static double[] apart(double[] wanted, double widthPx) {
        int n = wanted.length;
        double inside = widthPx - 2 * RADIUS_PX;
        double pitch = n < 2 ? PITCH_PX : Math.min(PITCH_PX, inside / (n - 1));
        double[] level = new double[n];
        int[] size = new int[n];
        int pools = 0;
        for (int i = 0; i < n; i++) {
            level[pools] = wanted[i] - i * pitch;
            size[pools] = 1;
            while (pools > 0 && level[pools - 1] > level[pools]) {
                int both = size[pools - 1] + size[pools];
                level[pools - 1] = (level[pools - 1] * size[pools - 1] + level[pools] * size[pools]) / both;
                size[pools - 1] = both;
                pools--;
            }
            pools++;
        }
        double[] x = new double[n];
        int i = 0;
        for (int pool = 0; pool < pools; pool++) {
            double kept = Math.min(Math.max(level[pool], RADIUS_PX), widthPx - RADIUS_PX - (n - 1) * pitch);
            for (int member = 0; member < size[pool]; member++) {
                x[i] = kept + i * pitch;
                i++;
            }
        }
        return x;
    }
}
