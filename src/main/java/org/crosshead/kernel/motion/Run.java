package org.crosshead.kernel.motion;

import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LimitedBy;
import org.crosshead.kernel.units.Check;
import org.jspecify.annotations.Nullable;

/**
 * A forecast run, sampled at the steps it was made in. Place, time, speed, pressure and masses are those at the sample; forces,
 * handles and steam are the means of the step that begins there (0 at the last sample), so that force times distance, summed,
 * gives the energy exactly. While the train stands there are samples at one place with different times.
 */
public final class Run {

    static final int POSITION = 0;
    static final int TIME = 1;
    static final int SPEED = 2;
    static final int REGULATOR = 3;
    static final int CUTOFF = 4;
    static final int PULL = 5;
    static final int RESISTANCE = 6;
    static final int GRAVITY = 7;
    static final int CURVE = 8;
    static final int BRAKE = 9;
    static final int INERTIA = 10;
    static final int MASS = 11;
    static final int LIMITED_BY = 12;
    static final int TRAIN_COLUMNS = 13;

    static final int PRESSURE = 0;
    static final int WATER = 1;
    static final int TANK_WATER = 2;
    static final int COAL_BURNT = 3;
    static final int STEAM = 4;
    static final int TANK_USED = 5;
    static final int FIRE = 6;
    static final int BLOWING = 7;
    static final int AUXILIARY = 8;
    static final int SUPPLIES = 9;
    static final int BLOWER = 10;
    static final int DAMPERS = 11;
    static final int ENGINE_COLUMNS = 12;

    private static final double SAME_TIME_S = 1e-6;
    private static final List<LimitedBy> LIMITS = List.of(LimitedBy.values());

    private final int engineCount;
    private final int stride;
    private final int size;
    private final double[] rows;
    private final List<Change> changes;
    private final List<CallTime> callTimes;

    Run(int engineCount, double[] rows, List<Change> changes, List<CallTime> callTimes) {
        this.engineCount = engineCount;
        this.stride = TRAIN_COLUMNS + ENGINE_COLUMNS * engineCount;
        this.size = rows.length / stride;
        this.rows = rows;
        this.changes = List.copyOf(changes);
        this.callTimes = List.copyOf(callTimes);
    }

    public int size() {
        return size;
    }

    public int engineCount() {
        return engineCount;
    }

    public List<Change> changes() {
        return changes;
    }

    /** Returns the times at the calls reached, in running order; the departure from the last is its arrival. */
    public List<CallTime> callTimes() {
        return callTimes;
    }

    public double positionM(int sample) {
        return column(sample, POSITION);
    }

    public double timeS(int sample) {
        return column(sample, TIME);
    }

    public double speedMps(int sample) {
        return column(sample, SPEED);
    }

    public double regulator(int sample) {
        return column(sample, REGULATOR);
    }

    public double cutoff(int sample) {
        return column(sample, CUTOFF);
    }

    /** Pull of all engines. Where the speed allowed is held it is what holds it, less than the handles as set would give. */
    public double pullN(int sample) {
        return column(sample, PULL);
    }

    public double resistanceN(int sample) {
        return column(sample, RESISTANCE);
    }

    /** Force of gravity against the train, negative on a fall. */
    public double gravityN(int sample) {
        return column(sample, GRAVITY);
    }

    public double curveN(int sample) {
        return column(sample, CURVE);
    }

    public double brakeN(int sample) {
        return column(sample, BRAKE);
    }

    /** Mass, turning wheels included. */
    public double inertiaKg(int sample) {
        return column(sample, INERTIA);
    }

    public double massKg(int sample) {
        return column(sample, MASS);
    }

    /** Returns what limits the pull of the train engine; empty where steam is shut. */
    public Optional<LimitedBy> limitedBy(int sample) {
        int code = (int) column(sample, LIMITED_BY);
        return code < 0 ? Optional.empty() : Optional.of(LIMITS.get(code));
    }

    static int limitCode(@Nullable LimitedBy limit) {
        return limit == null ? -1 : LIMITS.indexOf(limit);
    }

    /** Boiler pressure of the train engine above the atmosphere. */
    public double pressurePa(int sample) {
        return pressurePa(sample, 0);
    }

    public double pressurePa(int sample, int engine) {
        return engineColumn(sample, engine, PRESSURE);
    }

    /** Water in the boiler of the train engine. */
    public double waterKg(int sample) {
        return waterKg(sample, 0);
    }

    public double waterKg(int sample, int engine) {
        return engineColumn(sample, engine, WATER);
    }

    public double tankWaterKg(int sample, int engine) {
        return engineColumn(sample, engine, TANK_WATER);
    }

    /** Water taken out of tank or tender since the start. */
    public double tankUsedKg(int sample, int engine) {
        return engineColumn(sample, engine, TANK_USED);
    }

    /** Coal put on since the start. */
    public double coalBurntKg(int sample, int engine) {
        return engineColumn(sample, engine, COAL_BURNT);
    }

    public double steamKgPerS(int sample, int engine) {
        return engineColumn(sample, engine, STEAM);
    }

    /** How far the blower is open, 0 to 1. */
    public double blower(int sample, int engine) {
        return engineColumn(sample, engine, BLOWER);
    }

    /** How far the dampers are open, 0 to 1. */
    public double dampers(int sample, int engine) {
        return engineColumn(sample, engine, DAMPERS);
    }

    /** Steam that brake, blower and the like take. */
    public double auxiliaryKgPerS(int sample, int engine) {
        return engineColumn(sample, engine, AUXILIARY);
    }

    /** Returns pressure, water and fire of a boiler. */
    public EngineState state(int sample, int engine) {
        return new EngineState(
                pressurePa(sample, engine),
                waterKg(sample, engine),
                engineColumn(sample, engine, FIRE),
                engineColumn(sample, engine, BLOWING) > 0,
                engineColumn(sample, engine, SUPPLIES));
    }

    public double coalTotalKg(int engine) {
        return coalBurntKg(size - 1, engine);
    }

    public double startM() {
        return positionM(0);
    }

    public double endM() {
        return positionM(size - 1);
    }

    public double durationS() {
        return timeS(size - 1);
    }

    /** Returns the sample with the lowest boiler pressure; the first of several. */
    public int lowestPressure(int engine) {
        return lowest(TRAIN_COLUMNS + engine * ENGINE_COLUMNS + PRESSURE);
    }

    /** Returns the sample with the least water in the boiler; the first of several. */
    public int lowestWater(int engine) {
        return lowest(TRAIN_COLUMNS + engine * ENGINE_COLUMNS + WATER);
    }

    /** Returns the sample with the least water in tank or tender; the first of several. */
    public int lowestTankWater(int engine) {
        return lowest(TRAIN_COLUMNS + engine * ENGINE_COLUMNS + TANK_WATER);
    }

    /**
     * Returns the run at a place. Where the train stands, at its departure; within the train's own length beyond a reversal, where its
     * head changes ends, standing at the departure too.
     *
     * @param positionM from {@link #startM()} to {@link #endM()}
     */
    public RunPoint at(double positionM) {
        Check.within("positionM", positionM, startM(), endM());
        int low = sampleAt(positionM);
        if (low == size - 1) {
            return new RunPoint(low, 0, positionM, timeS(low), speedMps(low));
        }
        double fromM = positionM - positionM(low);
        double share = fromM / (positionM(low + 1) - positionM(low));
        double start = speedMps(low);
        double end = speedMps(low + 1);
        double speedMps = Math.sqrt(start * start + (end * end - start * start) * share);
        double timeS = fromM <= 0 || start + speedMps <= 0 ? timeS(low) : timeS(low) + 2 * fromM / (start + speedMps);
        return new RunPoint(low, share, positionM, timeS, speedMps);
    }

    /** Returns the last sample at or before a place. */
    public int sampleAt(double positionM) {
        int low = 0;
        int high = size - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (positionM(middle) <= positionM) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Returns the last sample at or before a time; the first before them all. */
    public int sampleAtTime(double timeS) {
        int low = 0;
        int high = size - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (timeS(middle) <= timeS + SAME_TIME_S) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private int lowest(int column) {
        int found = 0;
        for (int i = 1; i < size; i++) {
            if (column(i, column) < column(found, column)) {
                found = i;
            }
        }
        return found;
    }

    private double engineColumn(int sample, int engine, int column) {
        return column(sample, TRAIN_COLUMNS + engine * ENGINE_COLUMNS + column);
    }

    private double column(int sample, int column) {
        return rows[sample * stride + column];
    }
}
