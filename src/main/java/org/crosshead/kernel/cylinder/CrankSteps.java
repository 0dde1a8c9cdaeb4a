package org.crosshead.kernel.cylinder;

import java.util.Arrays;

/**
 * A turn of the crank in small steps for one setting of the valve gear, with a step's end at every event, so that no port is
 * open in part of a step. Index 0 is the beginning of the stroke.
 */
final class CrankSteps {

    /** Equal steps of a turn before the events cut some of them in two. */
    private static final int EQUAL = 180;

    /** Volume swept at the start of each step, as a share of the stroke's; one more than steps, the last equal to the first. */
    final double[] swept;
    /** Share of a turn's time. */
    final double[] turnShare;
    /** Area open to steam and to the exhaust in the middle of each step, as a share of the bore's square. */
    final double[] steamArea;

    final double[] exhaustArea;

    CrankSteps(ValveEvents events) {
        double[] angles = new double[EQUAL + 5];
        for (int i = 0; i <= EQUAL; i++) {
            angles[i] = 2 * Math.PI * i / EQUAL;
        }
        System.arraycopy(events.angles(), 0, angles, EQUAL + 1, 4);
        Arrays.sort(angles);
        int steps = angles.length - 1;
        swept = new double[steps + 1];
        turnShare = new double[steps];
        steamArea = new double[steps];
        exhaustArea = new double[steps];
        for (int i = 0; i <= steps; i++) {
            swept[i] = (1 - Math.cos(angles[i])) / 2;
        }
        for (int i = 0; i < steps; i++) {
            turnShare[i] = (angles[i + 1] - angles[i]) / (2 * Math.PI);
            double middle = (angles[i] + angles[i + 1]) / 2;
            double displacement = events.displacement(Math.cos(middle), Math.sin(middle));
            steamArea[i] = events.steamArea(displacement);
            exhaustArea[i] = events.exhaustArea(displacement);
        }
    }

    int count() {
        return turnShare.length;
    }

    /** Returns the step that begins at or after the end of the stroke. */
    int half() {
        int i = 0;
        while (i < count() && swept[i + 1] > swept[i]) {
            i++;
        }
        return i;
    }
}
