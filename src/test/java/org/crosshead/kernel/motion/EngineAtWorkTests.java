package org.crosshead.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineFixtures;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.junit.jupiter.api.Test;

/** How the crew of an assisting engine follow the train engine's handles. */
class EngineAtWorkTests {

    private static final Boiler BOILER = EngineFixtures.express().boiler();
    private static final EngineAtWork ENGINE =
            EngineAtWork.throughout(new SteadyEngine(50_000), state(1, 0.8), new Supply(10_000, 10_000, 3_000));
    private static final Controls WIDE = new Controls(1, 0.4);

    private static EngineState state(double pressureShare, double glass) {
        double rangeKg = BOILER.waterFullKg() - BOILER.waterLeastKg();
        return new EngineState(pressureShare * BOILER.pressureMaxPa(), BOILER.waterLeastKg() + glass * rangeKg, 0);
    }

    @Test
    void aFullBoilerFollowsAsTold() {
        assertThat(ENGINE.followed(WIDE, state(1, 0.8))).isEqualTo(WIDE);
        assertThat(ENGINE.followed(new Controls(0, 0.4), state(0.3, 0))).isEqualTo(new Controls(0, 0.4));
    }

    @Test
    void aBoilerLowInPressureOrWaterIsEasedToTheFirstValve() {
        assertThat(ENGINE.followed(WIDE, state(0.59, 0.8)).regulator()).isEqualTo(Controls.FIRST_VALVE);
        assertThat(ENGINE.followed(WIDE, state(1, 0)).regulator()).isEqualTo(Controls.FIRST_VALVE);
        assertThat(ENGINE.followed(WIDE, state(0.65, 0.8)).regulator()).isCloseTo(0.75, within(1e-9));
        assertThat(ENGINE.followed(WIDE, state(1, 0.05)).regulator()).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void neverBeyondItsOwnGear() {
        double full = EngineFixtures.express().valveGear().cutoffFull();
        assertThat(ENGINE.followed(new Controls(1, 0.9), state(1, 0.8)).cutoff())
                .isEqualTo(full);
    }
}
