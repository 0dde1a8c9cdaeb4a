package org.crosshead.kernel.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.braking.ServiceBrakes;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;

/** Pins common practice of the trade. It has no published source and is from memory; cutoffs are pinned with the class estimates. */
class CommonPracticeReferenceTests {

    @Test
    void cocksAreShutAfterAboutSixBeats() {
        assertThat(RuleDriver.BEATS_WITH_COCKS_OPEN).isEqualTo(6);
    }

    @Test
    void brakeIsReleasedAtTwentyOneInches() {
        assertThat(ServiceBrakes.VACUUM_RELEASED_PA / Units.paFromInHg(1)).isCloseTo(21, within(1e-9));
    }

    /** Two thirds of the force is the practice; less is taken. */
    @Test
    void serviceApplicationUsesLessThanTwoThirds() {
        assertThat(ServiceBrakes.SERVICE_SHARE).isEqualTo(0.6).isLessThan(2.0 / 3);
    }
}
