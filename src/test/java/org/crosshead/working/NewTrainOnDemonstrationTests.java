package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainRefusedException.Problem;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;

/** Checks that a train worked out between any two ends of the demonstration railway may be stored as it stands. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:demonstration;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
class NewTrainOnDemonstrationTests {

    private static final List<String> PLACES = List.of(
            "Zellbury Quay",
            "Umberlow Junction",
            "Corbel Top",
            "Stobberton",
            "Quillhaven",
            "Heatherlode",
            "Sandry Docks");

    @Autowired
    private NewTrain newTrain;

    @Autowired
    private PathRules pathRules;

    @Test
    void leadsFromEveryPlaceToEveryOther() {
        List<String> wrong = new ArrayList<>();
        for (String from : PLACES) {
            for (String to : PLACES) {
                if (!from.equals(to)) {
                    problems(from, to).forEach(problem -> wrong.add(from + " to " + to + ": " + problem));
                }
            }
        }

        assertThat(newTrain.places()).containsAll(PLACES);
        assertThat(wrong).isEmpty();
    }

    private List<Problem> problems(String from, String to) {
        TrainDraft draft = newTrain.draft(new NewTrain.Wish(
                "N1",
                from,
                to,
                WorkingFixtures.DAY,
                Instant.parse("2030-05-06T10:00:00Z"),
                TrainKind.PASSENGER,
                true,
                "SET",
                "612",
                200,
                false,
                null,
                null,
                RailState.DRY,
                "",
                false,
                false));
        List<Problem> problems = new ArrayList<>(pathRules.problemsOf(draft));
        problems.addAll(TrainRules.problemsOf(
                draft,
                new TrainRules.Known(
                        code -> true,
                        number -> true,
                        number -> OptionalDouble.empty(),
                        staffNumber -> true,
                        (slot, day) -> true)));
        return problems;
    }
}
