package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.braking.ContinuousBrake.Means;
import org.crosshead.kernel.braking.ContinuousBrake.Timing;
import org.junit.jupiter.api.Test;

/** Times of release against those told from memory (UIC 540 15 to 20 s and 45 to 60 s; vacuum 20 to 60 s), and their order. */
class ReleaseTests {

    private static ContinuousBrake brake(Means means, Timing timing, double lengthM) {
        return new ContinuousBrake(means, timing, lengthM, CastIronBlocks.dry(100_000, 100_000));
    }

    @Test
    void takesTheSlowerEndOfWhatIsTold() {
        assertThat(Release.recoverS(brake(Means.AIR, Timing.PASSENGER, 200))).isBetween(15.0, 20.0);
        assertThat(Release.recoverS(brake(Means.AIR, Timing.GOODS, 200))).isBetween(45.0, 60.0);
        assertThat(Release.recoverS(brake(Means.VACUUM, Timing.PASSENGER, 0))).isEqualTo(20, within(1e-9));
        assertThat(Release.recoverS(brake(Means.VACUUM, Timing.PASSENGER, 200))).isEqualTo(40, within(1e-9));
        assertThat(Release.recoverS(brake(Means.VACUUM, Timing.GOODS, 900))).isEqualTo(60, within(1e-9));
    }

    @Test
    void releaseIsSlowerThanApplication() {
        for (Means means : Means.values()) {
            ContinuousBrake brake = brake(means, Timing.PASSENGER, 200);
            Application emergency = ServiceBrakes.emergency(brake, 0);
            assertThat(Release.recoverS(brake)).as("%s", means).isGreaterThanOrEqualTo(emergency.buildUpS());
        }
    }

    @Test
    void forceComesBackInProportionToTime() {
        ContinuousBrake brake = brake(Means.AIR, Timing.PASSENGER, 200);
        assertThat(Release.share(brake, 0)).isZero();
        assertThat(Release.share(brake, 5)).isEqualTo(0.25, within(1e-12));
        assertThat(Release.share(brake, 500)).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> Release.share(brake, -1));
    }
}
