package org.crosshead.kernel.braking;

import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;

/**
 * A run under one application of the brake, in steps of time by the fourth-order Runge-Kutta rule. Gravity is averaged over the train.
 * While the crew acts the speed does not fall, as the engine may still be pulling; from then on the train drifts.
 */
final class BrakedRun {

    static final double STEP_S = 0.5;

    private static final double SEARCH_MAX_M = 20_000;
    private static final int STEPS_MAX = 4_000;
    private static final int HALVINGS = 40;

    private final Application application;
    private final TrainBody body;
    private final GradientProfile profile;
    private final double fromM;
    private final double toMps;
    private final double speedMaxMps;
    private final StoppingDistance.Listener listener;

    private double positionM;
    private double speedMps;
    private double timeS;
    private boolean down;

    BrakedRun(
            Application application,
            TrainBody body,
            GradientProfile profile,
            Start start,
            StoppingDistance.Listener listener) {
        this.listener = listener;
        this.application = application;
        this.body = body;
        this.profile = profile;
        this.fromM = start.positionM();
        this.toMps = start.toMps();
        positionM = start.positionM();
        speedMps = start.fromMps();
        speedMaxMps = Math.min(1.5 * start.fromMps() + 5, CastIronBlocks.SPEED_MAX_MPS);
        down = start.fromMps() <= start.toMps();
    }

    /** Where and how fast it begins, and the speed that is wanted. */
    record Start(double positionM, double fromMps, double toMps) {}

    /** Returns the outcome; the listener hears of the start and of every step, distances from the start. */
    Braking outcome() {
        listener.at(0, speedMps);
        phase(application.reactionS(), (t, x, v) -> Math.max(0, driftMps2(x, v)));
        double reactionM = positionM - fromM;
        phase(application.delayS(), (t, x, v) -> driftMps2(x, v));
        double riseS = application.buildUpS();
        phase(riseS, (t, x, v) -> driftMps2(x, v) - t / riseS * brakeMps2(v));
        double buildUpM = positionM - fromM - reactionM;
        full();
        double distanceM = positionM - fromM;
        return down
                ? new Braking.Slows(distanceM, timeS, reactionM, buildUpM, distanceM - reactionM - buildUpM)
                : new Braking.DoesNotSlow(speedMps, positionM);
    }

    private void phase(double durationS, Rate rate) {
        int steps = (int) Math.ceil(durationS / STEP_S);
        for (int i = 0; i < steps && goesOn(); i++) {
            step(rate, durationS / steps * i, durationS / steps);
        }
    }

    private void full() {
        Rate rate = (t, x, v) -> driftMps2(x, v) - brakeMps2(v);
        for (int i = 0; i < STEPS_MAX && goesOn(); i++) {
            step(rate, 0, STEP_S);
        }
    }

    private boolean goesOn() {
        return !down && speedMps <= speedMaxMps && positionM - fromM <= SEARCH_MAX_M;
    }

    private void step(Rate rate, double fromS, double lengthS) {
        State next = after(rate, fromS, lengthS);
        double takenS = lengthS;
        if (next.speedMps() <= toMps) {
            takenS = reachedS(rate, fromS, lengthS);
            next = after(rate, fromS, takenS);
            down = true;
        }
        positionM = next.positionM();
        speedMps = next.speedMps();
        timeS += takenS;
        listener.at(positionM - fromM, speedMps);
    }

    /** Returns the time within a step at which the wanted speed is reached, by halving: it lies above at 0 and not above at the end. */
    private double reachedS(Rate rate, double fromS, double lengthS) {
        double low = 0;
        double high = lengthS;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (after(rate, fromS, middle).speedMps() <= toMps) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private State after(Rate rate, double fromS, double lengthS) {
        double halfS = lengthS / 2;
        double v1 = speedMps;
        double a1 = rate.mps2(fromS, positionM, v1);
        double v2 = v1 + halfS * a1;
        double a2 = rate.mps2(fromS + halfS, positionM + halfS * v1, v2);
        double v3 = v1 + halfS * a2;
        double a3 = rate.mps2(fromS + halfS, positionM + halfS * v2, v3);
        double v4 = v1 + lengthS * a3;
        double a4 = rate.mps2(fromS + lengthS, positionM + lengthS * v3, v4);
        return new State(
                positionM + lengthS / 6 * (v1 + 2 * v2 + 2 * v3 + v4), v1 + lengthS / 6 * (a1 + 2 * a2 + 2 * a3 + a4));
    }

    private double driftMps2(double headM, double atMps) {
        double gravityN = body.massKg() * Units.GRAVITY_MPS2 * profile.meanGradient(headM, body.lengthM());
        return -(gravityN + body.resistance().forceN(Math.max(0, atMps))) / body.inertiaKg();
    }

    private double brakeMps2(double atMps) {
        double withinMps = Math.min(CastIronBlocks.SPEED_MAX_MPS, Math.max(0, atMps));
        return application.force().forceN(withinMps) / body.inertiaKg();
    }

    /** Acceleration at a time in the phase, a place of the head and a speed. */
    private interface Rate {

        double mps2(double timeS, double headM, double speedMps);
    }

    private record State(double positionM, double speedMps) {}
}
