package org.crosshead.briefing.build;

import java.util.OptionalDouble;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.Subset026Conversion;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.FormationFigures;

/**
 * The standard's way to an emergency distance, beside the one by block force: from the braked weight percentage of the train, by the
 * conversion of SUBSET-026. It is used where the braked weight of every braked vehicle is known; an engine whose own is not known
 * counts with its mass and without a brake, the safe side.
 */
final class BrakedWeight {

    /** Below this percentage the conversion is outside the range that it was made for. */
    static final double PERCENT_LEAST = 30;

    private static final double PERCENT_USED_LEAST = 10;
    private static final double PERCENT_MOST = 200;
    private static final double PER_CENT = 100;

    private BrakedWeight() {}

    /** Returns the braked weight percentage; empty where it is not known or none that the standard converts. */
    static OptionalDouble percent(EngineFigures.Resolved engine, FormationFigures.Resolved load, TrainBody body) {
        double brakedKg = engine.brake().brakedKg().orElse(0);
        int braked = 0;
        for (FormationFigures.Vehicle vehicle : load.vehicles()) {
            if (vehicle.braked()) {
                if (vehicle.brakedKg().isEmpty()) {
                    return OptionalDouble.empty();
                }
                brakedKg += vehicle.brakedKg().getAsDouble();
                braked++;
            }
        }
        double percent = PER_CENT * brakedKg / body.massKg();
        return braked > 0 && percent >= PERCENT_USED_LEAST && percent <= PERCENT_MOST
                ? OptionalDouble.of(percent)
                : OptionalDouble.empty();
    }

    /** Returns an emergency application by the standard's decelerations, timed as the train's own brake. */
    static Application emergency(Application own, double percent, TrainBody body) {
        return new Application(
                Application.Kind.EMERGENCY,
                own.reactionS(),
                own.delayS(),
                own.buildUpS(),
                Subset026Conversion.force(percent, body.inertiaKg()));
    }

    /** Returns the train without the resistance that the standard's decelerations hold already. */
    static TrainBody body(TrainBody body) {
        return new TrainBody(body.massKg(), body.rotatingShare(), body.lengthM(), RunningResistance.NONE);
    }

    /** Returns whether the standard converts for a brake of this means; its times and percentages are those of air brakes. */
    static boolean applies(ContinuousBrake brake) {
        return brake.means() == ContinuousBrake.Means.AIR;
    }
}
