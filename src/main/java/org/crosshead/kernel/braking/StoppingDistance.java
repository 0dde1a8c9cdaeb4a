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
        Check.within("fromMps", fromMps, 0, SPEED_MAX_MPS);
        Check.within("toMps", toMps, 0, SPEED_MAX_MPS);
        return new BrakedRun(application, body, profile, new BrakedRun.Start(fromM, fromMps, toMps)).outcome();
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
        double lateM = atM;
        double firstM = overrun.atM(atM);
        if (firstM <= 0) {
            return atM;
        }
        double leastM = Math.max(profile.startM(), atM - SEARCH_MAX_M);
        double earlyM = atM - (firstM < SEARCH_MAX_M ? firstM : 500);
        while (earlyM > leastM && overrun.atM(earlyM) > 0) {
            lateM = earlyM;
            earlyM -= Math.max(50, (atM - earlyM) / 4);
        }
        earlyM = Math.max(earlyM, leastM);
        return overrun.atM(earlyM) > 0 ? Double.NaN : lastGoodM(overrun, earlyM, lateM);
    }

    /** Returns the place of no overrun between one without and one with overrun, by false position and halving in turn. */
    private static double lastGoodM(Overrun overrun, double withoutM, double withM) {
        double goodM = withoutM;
        double badM = withM;
        double good = overrun.atM(goodM);
        double bad = overrun.atM(badM);
        for (int i = 0; i < TRIES_MAX && badM - goodM > EXACT_M && good < -EXACT_M; i++) {
            double middleM = (goodM + badM) / 2;
            double guessM = goodM + (badM - goodM) * good / (good - bad) - EXACT_M / 2;
            double tryM = i % 3 == 2 || !(guessM > goodM) ? middleM : guessM;
            double over = overrun.atM(tryM);
            if (over > 0) {
                badM = tryM;
                bad = over;
            } else {
                goodM = tryM;
                good = over;
            }
        }
        return goodM;
    }

    /** How far beyond the place the wanted speed is reached when braking begins at a place; infinite if never. */
    private interface Overrun {

        double atM(double fromM);
    }
}
