package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.route.Direction;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.working.WorkingFixtures;
import org.junit.jupiter.api.Test;

/** What a train from 0 to 480 chains of an invented main line asks of its crew. */
class CrewDutiesTests {

    private static final String ITS_LINE = WorkingFixtures.train().legs().get(0).line();

    private static RouteSection section(String code, String line, double from, double to) {
        return new RouteSection(
                code.hashCode(),
                code,
                code,
                "MAIN",
                from,
                to,
                Direction.RISING,
                Band.USUAL,
                "hard",
                null,
                "one",
                "another",
                1,
                line,
                LearningNeeds.NONE,
                List.of());
    }

    private static TrainRoad road(RouteSection... sections) {
        return new TrainRoad(WorkingFixtures.train(), List.of(sections));
    }

    private static CrewDuties duties(RouteSection... sections) {
        return new CrewDuties(
                WorkingFixtures.train(),
                road(sections),
                number -> Optional.empty(),
                number -> 1,
                post -> List.of(),
                Set.of(),
                (section, low, high) -> false);
    }

    private static List<String> asked(RouteSection... sections) {
        return duties(sections).needs().get(0).duties().stream()
                .map(duty -> duty.subject().code())
                .toList();
    }

    @Test
    void sectionOfAnotherRunningLineIsNotAsked() {
        assertThat(asked(section("A", ITS_LINE, 0, 480), section("B", "Slow line", 0, 480)))
                .containsExactly("A");
        assertThat(asked(section("A", "", 0, 480))).containsExactly("A");
        assertThat(road(section("B", "Slow line", 0, 480)).gaps()).hasSize(1);
        assertThat(road(section("A", ITS_LINE, 0, 480)).gaps()).isEmpty();
    }

    /** Two sections over one stretch do not make up for a stretch without any. */
    @Test
    void sectionsThatOverlapHideNoGap() {
        assertThat(road(section("A", "", 0, 240), section("B", "", 0, 240)).gaps())
                .hasSize(1);
        assertThat(road(section("A", "", 0, 300), section("B", "", 200, 480)).gaps())
                .isEmpty();
        assertThat(road(section("A", "", 0, 200), section("B", "", 240, 480)).gaps())
                .hasSize(1);
    }
}
