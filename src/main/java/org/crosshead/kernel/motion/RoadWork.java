package org.crosshead.kernel.motion;

import org.crosshead.kernel.resistance.CurveResistance;
import org.crosshead.kernel.track.Curves.CurveDrag;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.units.Units;

/**
 * Work of gravity and of curves on each kilogram of a train of one length, J/kg, while its head runs from place to place. Tabulated
 * at the nodes of a grid, where most steps begin and end.
 */
final class RoadWork {

    private final GradientProfile gradients;
    private final CurveDrag curves;
    private final double trainLengthM;
    private final double[] nodesM;
    private final double[] heightM;
    private final double[] curveWork;

    /** Where the crew last looked ahead from, and the sums there: they look several times from one place. */
    private double hereM = Double.NaN;

    private double hereHeightM;
    private double hereCurveWork;

    RoadWork(Track track, double trainLengthM, double[] nodesM) {
        this.gradients = track.gradients();
        this.curves = track.curves().drag(CurveResistance::perMassN);
        this.trainLengthM = trainLengthM;
        this.nodesM = nodesM;
        heightM = new double[nodesM.length];
        curveWork = new double[nodesM.length];
        for (int i = 0; i < nodesM.length; i++) {
            heightM[i] = gradients.meanHeightM(nodesM[i], trainLengthM);
            curveWork[i] = curves.workTo(nodesM[i], trainLengthM);
        }
    }

    /** Returns the work of gravity between two places of a cell. */
    double gravity(int cell, double fromM, double toM) {
        return Units.GRAVITY_MPS2 * (heightM(cell, toM) - heightM(cell, fromM));
    }

    /** Returns the work of curves between two places of a cell. */
    double curve(int cell, double fromM, double toM) {
        return curveWork(cell, toM) - curveWork(cell, fromM);
    }

    /** Returns the work of both between two places of a cell. */
    double within(int cell, double fromM, double toM) {
        return gravity(cell, fromM, toM) + curve(cell, fromM, toM);
    }

    /** Returns the work of both from here to a place ahead, in this cell or another. */
    double ahead(double fromM, double toM) {
        look(fromM);
        return Units.GRAVITY_MPS2 * (gradients.meanHeightM(toM, trainLengthM) - hereHeightM)
                + (curves.workTo(toM, trainLengthM) - hereCurveWork);
    }

    /** Returns by how much the train as a whole rises from one place to another. */
    double riseM(double fromM, double toM) {
        double from = fromM == hereM ? hereHeightM : gradients.meanHeightM(fromM, trainLengthM);
        return gradients.meanHeightM(toM, trainLengthM) - from;
    }

    private void look(double fromM) {
        if (fromM != hereM) {
            hereM = fromM;
            hereHeightM = gradients.meanHeightM(fromM, trainLengthM);
            hereCurveWork = curves.workTo(fromM, trainLengthM);
        }
    }

    private double heightM(int cell, double atM) {
        if (atM == nodesM[cell]) {
            return heightM[cell];
        }
        return atM == nodesM[cell + 1] ? heightM[cell + 1] : gradients.meanHeightM(atM, trainLengthM);
    }

    private double curveWork(int cell, double atM) {
        if (atM == nodesM[cell]) {
            return curveWork[cell];
        }
        return atM == nodesM[cell + 1] ? curveWork[cell + 1] : curves.workTo(atM, trainLengthM);
    }
}
