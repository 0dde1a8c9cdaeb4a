package org.crosshead.kernel.braking;

import org.crosshead.kernel.braking.Application.Kind;
import org.crosshead.kernel.braking.ContinuousBrake.Means;
import org.crosshead.kernel.braking.ContinuousBrake.Timing;
import org.crosshead.kernel.units.Units;

/**
 * Applications of a train's brake, timed by its means and length.
 *
 * <p>Air: {@link Subset026Times}, which it read; the rise is twice what the equivalent time leaves after the reaction time. Vacuum,
 * steam and hand: from memory, [VACUUM-PRACTICE], never shown as sourced. Along a vacuum pipe an application runs at
 * {@value #VACUUM_WAVE_MPS} m/s, as without direct-admission valves; the vehicles begin one after the other.
 */
public final class ServiceBrakes {

    /** Force of a service application as a share of the full: two thirds is the practice, less is taken here. From memory. */
    public static final double SERVICE_SHARE = 0.6;

    /** Vacuum with the brake released, common practice without source: 21 inches of mercury. */
    public static final double VACUUM_RELEASED_PA = Units.paFromInHg(21);

    static final double VACUUM_WAVE_MPS = 50;

    private static final double HANDLE_TO_PIPE_S = 1;
    private static final double VACUUM_PASSENGER_S = 4;
    private static final double VACUUM_GOODS_S = 18;
    private static final double STEAM_RISE_S = 3;
    private static final double HAND_DELAY_S = 6;
    private static final double HAND_RISE_S = 20;
    private static final double SLOWER_IN_SERVICE = 1.67;

    private ServiceBrakes() {}

    /** Returns a full service application, at {@link #SERVICE_SHARE} of the force. */
    public static Application service(ContinuousBrake brake, double reactionS) {
        Times times = brake.means() == Means.AIR ? airService(brake) : other(brake, SLOWER_IN_SERVICE);
        return new Application(
                Kind.SERVICE,
                reactionS,
                times.delayS(),
                times.buildUpS(),
                brake.blocks().times(SERVICE_SHARE));
    }

    /** Returns an emergency application. */
    public static Application emergency(ContinuousBrake brake, double reactionS) {
        Times times = brake.means() == Means.AIR ? airEmergency(brake) : other(brake, 1);
        return new Application(Kind.EMERGENCY, reactionS, times.delayS(), times.buildUpS(), brake.blocks());
    }

    private static Times airService(ContinuousBrake brake) {
        Subset026Times times = published(brake);
        double reactionS = times.serviceReactionS();
        return new Times(reactionS, 2 * (times.serviceS(brake.lengthM()) - reactionS));
    }

    private static Times airEmergency(ContinuousBrake brake) {
        Subset026Times times = published(brake);
        double reactionS = times.emergencyReactionS();
        return new Times(reactionS, 2 * (times.emergencyS(brake.lengthM()) - reactionS));
    }

    private static Subset026Times published(ContinuousBrake brake) {
        return brake.timing() == Timing.PASSENGER ? Subset026Times.PASSENGER_P : Subset026Times.FREIGHT_G;
    }

    private static Times other(ContinuousBrake brake, double slower) {
        return switch (brake.means()) {
            case STEAM -> new Times(HANDLE_TO_PIPE_S, STEAM_RISE_S * slower);
            case HAND -> new Times(HAND_DELAY_S, HAND_RISE_S * slower);
            case VACUUM, AIR -> alongTrain(brake.lengthM() / VACUUM_WAVE_MPS, vacuumRiseS(brake.timing()) * slower);
        };
    }

    /**
     * One ramp for a train whose vehicles begin one after the other while the wave runs and rise alike: with the same mean time and the same spread
     * about it, so that distances agree with those of single vehicles to the third order.
     */
    private static Times alongTrain(double waveS, double riseS) {
        double buildUpS = Math.hypot(riseS, waveS);
        return new Times(HANDLE_TO_PIPE_S + (waveS + riseS - buildUpS) / 2, buildUpS);
    }

    private static double vacuumRiseS(Timing timing) {
        return timing == Timing.PASSENGER ? VACUUM_PASSENGER_S : VACUUM_GOODS_S;
    }

    private record Times(double delayS, double buildUpS) {}
}
