package org.crosshead.kernel.motion;

import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.traction.RailState;

/**
 * The cells that a run is made over, for those who plan it: cell {@code i} reaches from node {@code i} to the next. They are the
 * cells of {@link Forecast}, so that what is planned on them is what is run.
 */
public final class RunCells {

    private final RunRequest request;
    private final RunGrid grid;

    private RunCells(RunRequest request) {
        this.request = request;
        this.grid = new RunGrid(request, 1);
    }

    public static RunCells of(RunRequest request) {
        return new RunCells(request);
    }

    public int count() {
        return grid.cells();
    }

    public double nodeM(int node) {
        return grid.positionM[node];
    }

    /** Returns the node at a call or at the head's new place after a reversal. */
    public int node(double positionM) {
        return grid.cellFrom(positionM);
    }

    /** Returns the square of the speed allowed at the start of a cell: limits, and brakes for what lies ahead. */
    public double allowedStart(int cell) {
        return grid.allowedStart[cell];
    }

    /** Returns the square of the speed allowed at the end of a cell. */
    public double allowedEnd(int cell) {
        return grid.allowedEnd[cell];
    }

    public double inertiaKg(int cell) {
        return grid.inertiaKg[cell];
    }

    public RunningResistance resistance(int cell) {
        return grid.resistance[cell];
    }

    public RailState rail(int cell) {
        return grid.rail[cell];
    }

    /** Returns the work of gravity and curves over a cell, J; negative where the road falls. */
    public double workJ(int cell) {
        return grid.massKg[cell] * grid.work.within(cell, grid.positionM[cell], grid.positionM[cell + 1]);
    }

    /** Returns the force of the full service brake. */
    public double brakeN(double speedMps) {
        return request.train().service().force().forceN(speedMps);
    }
}
