package org.crosshead.kernel.standing;

import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.crosshead.kernel.units.Check;

/**
 * How many hand brakes a railway's own rule asks for: a chart by the number of vehicles, a share of the vehicles by the gradient, or
 * both, of which the greater counts. Railways' rules differ fivefold on the same gradient, [HAND-BRAKE-RULES]; none is built in.
 */
public final class HandBrakeTable {

    private final NavigableMap<Integer, Integer> brakesByVehicles;
    private final NavigableMap<Double, Double> shareBySlope;

    /**
     * A table.
     *
     * @param brakesByVehicles brakes of a train of up to so many vehicles; empty for no chart
     * @param shareBySlope share of the vehicles, from 0 to 1, where the slope is so steep (rise over run, 0 to 0.2) or steeper; empty for
     *     no such rule
     */
    public HandBrakeTable(NavigableMap<Integer, Integer> brakesByVehicles, NavigableMap<Double, Double> shareBySlope) {
        this.brakesByVehicles = new TreeMap<>(brakesByVehicles);
        this.shareBySlope = new TreeMap<>(shareBySlope);
        brakesByVehicles.forEach((vehicles, brakes) -> {
            Check.that(vehicles > 0, "vehicles must be positive, but was " + vehicles);
            Check.that(brakes >= 0, "brakes must not be negative, but was " + brakes);
        });
        shareBySlope.forEach((slope, share) -> {
            Check.within("slope", slope, 0, 0.2);
            Check.within("share", share, 0, 1);
        });
    }

    /** Says whether the railway has laid down nothing. */
    public boolean isEmpty() {
        return brakesByVehicles.isEmpty() && shareBySlope.isEmpty();
    }

    /**
     * Returns how many brakes are asked for; nothing where the railway has no rule, or its chart ends before a train of so many vehicles.
     *
     * @param vehicles behind the engine, 0 or more
     * @param slope rise over run, either sign, from -0.2 to 0.2
     */
    public OptionalInt brakes(int vehicles, double slope) {
        Check.that(vehicles >= 0, "vehicles must not be negative, but was " + vehicles);
        Check.within("slope", slope, -0.2, 0.2);
        if (isEmpty() || endsBefore(vehicles)) {
            return OptionalInt.empty();
        }
        var chart = brakesByVehicles.ceilingEntry(vehicles);
        var share = shareBySlope.floorEntry(Math.abs(slope));
        int byVehicles = chart == null || vehicles == 0 ? 0 : chart.getValue();
        int bySlope = share == null ? 0 : (int) Math.ceil(share.getValue() * vehicles);
        return OptionalInt.of(Math.max(byVehicles, bySlope));
    }

    /** Says whether the chart by vehicles ends before a train of so many. */
    public boolean endsBefore(int vehicles) {
        return !brakesByVehicles.isEmpty() && vehicles > brakesByVehicles.lastKey();
    }
}
