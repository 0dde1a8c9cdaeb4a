package org.crosshead.diagram;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.crosshead.diagram.StripModel.Limit;
import org.junit.jupiter.api.Test;

/** Which of several limits binds where. */
class CeilingTests {

    @Test
    void lowestBindsWhereLimitsOverlap() {
        List<Ceiling.Step> steps = Ceiling.over(
                List.of(new Limit(0, 1000, 60, "60", false), new Limit(400, 500, 20, "20", true)), 0, 1000);
        assertThat(steps).extracting(Ceiling.Step::fromM).containsExactly(0.0, 400.0, 500.0);
        assertThat(steps).extracting(step -> step.limit().label()).containsExactly("60", "20", "60");
    }

    @Test
    void neighboursOfOneSpeedAreOneStep() {
        List<Ceiling.Step> steps = Ceiling.over(
                List.of(new Limit(0, 500, 60, "60", false), new Limit(500, 1000, 60, "60", false)), 100, 900);
        assertThat(steps).hasSize(1);
        assertThat(steps.get(0).fromM()).isEqualTo(100);
        assertThat(steps.get(0).toM()).isEqualTo(900);
    }

    @Test
    void nothingStandsWhereNoLimitIsKnown() {
        assertThat(Ceiling.over(List.of(new Limit(0, 100, 60, "60", false)), 0, 1000))
                .extracting(Ceiling.Step::toM)
                .containsExactly(100.0);
    }
}
