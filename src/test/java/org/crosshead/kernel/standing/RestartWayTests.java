package org.crosshead.kernel.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.cylinder.TurningEffort;
import org.crosshead.kernel.cylinder.ValveEvents;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.standing.Restart.Balance;
import org.crosshead.kernel.standing.Restart.Way;
import org.junit.jupiter.api.Test;

/** How a standing train can be got going. */
class RestartWayTests {

    private static Balance balance(double pullN) {
        return new Balance(pullN, 20, 70, 10);
    }

    @Test
    void easiestWayThatTheForcesAllowIsTaken() {
        assertThat(Restart.way(balance(101), balance(200), balance(300))).isEqualTo(Way.STARTS);
        assertThat(Restart.way(balance(100), balance(101), balance(300))).isEqualTo(Way.SETS_BACK);
        assertThat(Restart.way(balance(60), balance(100), balance(101))).isEqualTo(Way.WITH_SAND);
        assertThat(Restart.way(balance(60), balance(80), balance(100))).isEqualTo(Way.DOES_NOT_START);
    }

    /** Forty wagons of 300 N to start and 100 N to keep moving: the last takes 300 while the others take 100 each. */
    @Test
    void fromSlackOnlyTheLastVehicleStands() {
        RunningResistance all = new RunningResistance(4_000, 2, 3, 12_000);
        RunningResistance slack = Restart.fromSlack(all, 40);
        assertThat(slack.startingN()).isEqualTo(39 * 100 + 300, within(1e-9));
        assertThat(slack.forceN(5)).isEqualTo(all.forceN(5));
        assertThat(Restart.fromSlack(all, 1).startingN()).isEqualTo(12_000, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> Restart.fromSlack(all, 0));
    }

    /**
     * Two cranks at a right angle, steam over the whole stroke: the least effort is that of one piston at full leverage with the other
     * dead, pi/4 of the mean (closed form). With cutoff one cylinder may be shut off, and the least is smaller; three and four cylinders
     * are more even.
     */
    @Test
    void leastEffortInTheWorstPositionOfTheCranks() {
        ValveEvents full = ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), 0.75);
        ValveEvents nearlyWhole = ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), 0.9);
        double two = TurningEffort.leastShareAtRest(full, 2);
        assertThat(two).isBetween(0.35, Math.PI / 4);
        assertThat(TurningEffort.leastShareAtRest(nearlyWhole, 2)).isBetween(two, Math.PI / 4 + 1e-6);
        assertThat(TurningEffort.leastShareAtRest(full, 3)).isGreaterThan(two);
        assertThatIllegalArgumentException().isThrownBy(() -> TurningEffort.leastShareAtRest(full, 5));
    }

    /** At cutoff c of the stroke the crank has turned by a with cos a = 1 - 2c; beyond it only the other piston pushes, with sin(a - 90). */
    @Test
    void leastEffortFollowsFromTheCutoffInClosedForm() {
        double cutoff = 0.75;
        double shutAt = Math.acos(1 - 2 * cutoff);
        double closed = Math.sin(shutAt - Math.PI / 2) / (2 * 2 / Math.PI);
        assertThat(TurningEffort.leastShareAtRest(ValveEvents.at(CylinderForm.LONG_TRAVEL.valve(), cutoff), 2))
                .isCloseTo(closed, within(0.01));
    }
}
