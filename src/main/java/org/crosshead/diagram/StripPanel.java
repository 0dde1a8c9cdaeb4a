package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * One piece of a strip.
 *
 * @param label what it shows, read out in its place
 */
public record StripPanel(double fromM, double toM, String label) {

    private static final double NARROW_MOST_M = 9_000;
    private static final double PLACE_REACH = 0.25;

    public StripPanel {
        if (!(toM > fromM)) {
            throw new IllegalArgumentException("a panel must end after it begins, but was " + fromM + " to " + toM);
        }
    }

    /** Returns where a panel is broken for a narrow screen: into equal pieces, moved to a place where one is near. */
    public static List<Double> narrowBreaks(StripModel model, double fromM, double toM) {
        int pieces = Math.max(1, (int) Math.ceil((toM - fromM) / NARROW_MOST_M));
        double pieceM = (toM - fromM) / pieces;
        List<Double> breaks = new ArrayList<>(List.of(fromM));
        for (int i = 1; i < pieces; i++) {
            breaks.add(nearestPlace(model, fromM + i * pieceM, pieceM * PLACE_REACH));
        }
        breaks.add(toM);
        return List.copyOf(breaks);
    }

    private static double nearestPlace(StripModel model, double wantedM, double reachM) {
        double bestM = wantedM;
        double bestReachM = reachM;
        for (StripModel.Mark mark : model.marks()) {
            double awayM = Math.abs(mark.fromM() - wantedM);
            if (mark.kind() == StripModel.MarkKind.PLACE && awayM < bestReachM) {
                bestM = mark.fromM();
                bestReachM = awayM;
            }
        }
        return bestM;
    }
}
