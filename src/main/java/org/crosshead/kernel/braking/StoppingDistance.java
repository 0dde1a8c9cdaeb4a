package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Distances in which a train stops or slows on real gradients.
 *
 * <p>The equation of motion of a point mass with turning wheels, gravity averaged over the length of the train; the brake as an
 * {@link Application}. No margin is added here. Slack between vehicles, sliding wheels and fading are left out.
 */
public final class StoppingDistance {

    private static final double SPEED_MAX_MPS = Units.mpsFromKmh(200);
    private static final double SEARCH_MAX_M = 20_000;
    private static final double EXACT_M = 0.01;
    private static final int TRIES_MAX = 80;

    private static final Listener NOBODY = (distanceM, speedMps) -> {};

    private StoppingDistance() {}

    /**
     * Returns what comes of deciding at {@code fromM} to brake from one speed to another.
     *
     * @param fromMps from 0 to 200 km/h
     * @param toMps not above fromMps, except that a train already slow enough needs no distance
     */
    public static Braking forward(
            Application application,
            TrainBody body,
            GradientProfile profile,
            double fromM,
            double fromMps,
            double toMps) {
        return traced(application, body, profile, fromM, fromMps, toMps, NOBODY);
    }

    /** Hears how a train slows, step by step. */
    @FunctionalInterface
    public interface Listener {

        /** Called at the start and after each step, by rising distance from where the crew decides. */
        void at(double distanceM, double speedMps);
    }

    /** As {@link #forward}, and tells a listener how it goes. */
    public static Braking traced(
            Application application,
            TrainBody body,
            GradientProfile profile,
            double fromM,
            double fromMps,
            double toMps,
            Listener listener) {
        Check.within("fromMps", fromMps, 0, SPEED_MAX_MPS);
        Check.within("toMps", toMps, 0, SPEED_MAX_MPS);
        return new BrakedRun(application, body, profile, new BrakedRun.Start(fromM, fromMps, toMps), listener)
                .outcome();
    }

    /**
     * Returns the last place at which the crew may decide to brake so that the speed is {@code toMps} at {@code atM}; with a reaction
     * time of 0 that is where the handle moves. Exact to 0.01 m, on the early side.
     *
     * @return NaN where it cannot be done from any place after the start of the profile and within 20 km
     */
    public static double brakeOnM(
            Application application,
            TrainBody body,
            GradientProfile profile,
            double atM,
            double fromMps,
            double toMps) {
        Overrun overrun =
                fromM -> forward(application, body, profile, fromM, fromMps, toMps) instanceof Braking.Slows slows
                        ? fromM + slows.distanceM() - atM
                        : Double.POSITIVE_INFINITY;
        double firstM = overrun.atM(atM);
        if (firstM <= 0) {
            return atM;
        }
        double leastM = Math.max(profile.startM(), atM - SEARCH_MAX_M);
        Tried late = new Tried(atM, firstM);
        while (late.placeM() > leastM) {
            double earlyM = Math.max(leastM, late.placeM() - stepBackM(late, atM));
            Tried early = new Tried(earlyM, overrun.atM(earlyM));
            if (early.overrunM() <= 0) {
                return lastGoodM(overrun, early, late);
            }
            late = early;
        }
        return Double.NaN;
    }

    /** Returns how far to go back from a place that is too late: a little more than the overrun, or a quarter of the way. */
    private static double stepBackM(Tried late, double atM) {
        return late.overrunM() < SEARCH_MAX_M ? late.overrunM() * 1.02 + 1 : Math.max(100, (atM - late.placeM()) / 4);
    }

    /** Returns the place of no overrun between one without and one with overrun, by false position and halving in turn. */
    private static double lastGoodM(Overrun overrun, Tried early, Tried late) {
        Tried good = early;
        Tried bad = late;
        for (int i = 0; i < TRIES_MAX && bad.placeM() - good.placeM() > EXACT_M && good.overrunM() < -EXACT_M; i++) {
            double acrossM = bad.placeM() - good.placeM();
            double guessM = acrossM * good.overrunM() / (good.overrunM() - bad.overrunM()) - EXACT_M / 2;
            double onM = good.placeM() + (i % 3 == 2 || !(guessM > 0) ? acrossM / 2 : guessM);
            Tried next = new Tried(onM, overrun.atM(onM));
            if (next.overrunM() > 0) {
                bad = next;
            } else {
                good = next;
            }
        }
        return good.placeM();
    }

    private record Tried(double placeM, double overrunM) {}

    /** How far beyond the place the wanted speed is reached when braking begins at a place; infinite if never. */
    private interface Overrun {

        double atM(double fromM);
    }
}
