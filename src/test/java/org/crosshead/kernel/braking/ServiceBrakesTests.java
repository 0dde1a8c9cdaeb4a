package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Checks the timing and force of applications, and the brakes themselves at their limits. */
class ServiceBrakesTests {

    private static final CastIronBlocks BLOCKS = CastIronBlocks.dry(0.7 * 200_000 * Units.GRAVITY_MPS2, 200_000);

    private static ContinuousBrake brake(ContinuousBrake.Means means, ContinuousBrake.Timing timing, double lengthM) {
        return new ContinuousBrake(means, timing, lengthM, BLOCKS);
    }

    private static double equivalentS(Application application) {
        return application.delayS() + application.buildUpS() / 2;
    }

    @ParameterizedTest
    @EnumSource
    void serviceIsSlowerAndWeakerThanEmergency(ContinuousBrake.Means means) {
        for (ContinuousBrake.Timing timing : ContinuousBrake.Timing.values()) {
            ContinuousBrake brake = brake(means, timing, 300);
            Application service = ServiceBrakes.service(brake, 4);
            Application emergency = ServiceBrakes.emergency(brake, 4);
            assertThat(service.kind()).isEqualTo(Application.Kind.SERVICE);
            assertThat(emergency.kind()).isEqualTo(Application.Kind.EMERGENCY);
            assertThat(equivalentS(service)).isGreaterThan(equivalentS(emergency));
            assertThat(service.force().forceN(25))
                    .isCloseTo(ServiceBrakes.SERVICE_SHARE * emergency.force().forceN(25), within(1e-6));
            assertThat(service.reactionS()).isEqualTo(4);
        }
    }

    @Test
    void airKeepsThePublishedEquivalentTime() {
        ContinuousBrake passenger = brake(ContinuousBrake.Means.AIR, ContinuousBrake.Timing.PASSENGER, 400);
        assertThat(equivalentS(ServiceBrakes.emergency(passenger, 0))).isCloseTo(5.02, within(1e-9));
        assertThat(equivalentS(ServiceBrakes.service(passenger, 0))).isCloseTo(10.6, within(1e-9));
        ContinuousBrake goods = brake(ContinuousBrake.Means.AIR, ContinuousBrake.Timing.GOODS, 500);
        assertThat(equivalentS(ServiceBrakes.emergency(goods, 0))).isCloseTo(13.25, within(1e-9));
    }

    @Test
    void vacuumWaitsForHalfTheTrain() {
        Application shortTrain =
                ServiceBrakes.emergency(brake(ContinuousBrake.Means.VACUUM, ContinuousBrake.Timing.PASSENGER, 0), 0);
        Application longTrain =
                ServiceBrakes.emergency(brake(ContinuousBrake.Means.VACUUM, ContinuousBrake.Timing.PASSENGER, 300), 0);
        assertThat(equivalentS(longTrain) - equivalentS(shortTrain)).isCloseTo(3, within(1e-9));
        assertThat(shortTrain.buildUpS()).isEqualTo(4);
        assertThat(longTrain.buildUpS()).isCloseTo(Math.hypot(4, 6), within(1e-12));
    }

    @Test
    void goodsFillsSlower() {
        for (ContinuousBrake.Means means :
                new ContinuousBrake.Means[] {ContinuousBrake.Means.VACUUM, ContinuousBrake.Means.AIR}) {
            assertThat(equivalentS(ServiceBrakes.service(brake(means, ContinuousBrake.Timing.GOODS, 300), 0)))
                    .isGreaterThan(
                            equivalentS(ServiceBrakes.service(brake(means, ContinuousBrake.Timing.PASSENGER, 300), 0)));
        }
    }

    @Test
    void blocksNeverHoldMoreThanTheRail() {
        CastIronBlocks hard = CastIronBlocks.dry(2e6, 100_000);
        assertThat(hard.forceN(0)).isCloseTo(0.15 * 100_000 * Units.GRAVITY_MPS2, within(1e-6));
        assertThat(hard.times(0.1).forceN(0)).isCloseTo(0.27 * 2e5, within(1e-6));
        CastIronBlocks wet = new CastIronBlocks(1e5, CastIronBlocks.WET_OR_HOT, 1e6);
        assertThat(wet.forceN(0)).isCloseTo(0.8 * 0.27 * 1e5, within(1e-6));
        assertThat(wet.plus(hard).frictionShare()).isEqualTo(0.8);
        assertThat(wet.plus(hard).blockForceN()).isEqualTo(2.1e6);
    }

    @Test
    void severalBrakesAddUp() {
        CombinedBrake both = CombinedBrake.of(new CastIronBlocks(1e6, 1, 1_000), BLOCKS);
        assertThat(both.forceN(20)).isCloseTo(1_000 + BLOCKS.forceN(20), within(1e-9));
        assertThat(CombinedBrake.of().forceN(20)).isZero();
    }

    @Test
    void conversionChangesStepAboveItsSpeedLimit() {
        double limitMps = Subset026Conversion.speedLimitMps(50);
        assertThat(Subset026Conversion.decelerationMps2(50, limitMps)).isEqualTo(Subset026Conversion.basicMps2(50));
        assertThat(Subset026Conversion.decelerationMps2(50, Units.mpsFromKmh(95)))
                .isEqualTo(Subset026Conversion.stepMps2(1, 50));
        assertThat(Subset026Conversion.decelerationMps2(100, Units.mpsFromKmh(140)))
                .isEqualTo(Subset026Conversion.stepMps2(3, 100));
        assertThat(Subset026Conversion.decelerationMps2(100, Units.mpsFromKmh(190)))
                .isEqualTo(Subset026Conversion.stepMps2(5, 100));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> brake(ContinuousBrake.Means.AIR, ContinuousBrake.Timing.GOODS, 1_600))
                .hasMessageContaining("lengthM");
        assertThatThrownBy(() -> new CastIronBlocks(-1, 1, 1)).hasMessageContaining("blockForceN");
        assertThatThrownBy(() -> CastIronBlocks.friction(-0.1)).hasMessageContaining("speedMps");
        assertThatThrownBy(() -> BLOCKS.times(-0.1)).hasMessageContaining("multiple");
        assertThatThrownBy(() -> Subset026Conversion.basicMps2(5)).hasMessageContaining("lambda");
        assertThatThrownBy(() -> Subset026Conversion.stepMps2(6, 100)).hasMessageContaining("n must");
        assertThatThrownBy(() -> Subset026Times.FREIGHT_G.serviceS(Double.NaN)).hasMessageContaining("lengthM");
        assertThatThrownBy(() -> ConstantRetardation.of(-1, 1)).hasMessageContaining("retardationMps2");
    }
}
