package org.crosshead.routeknowledge.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Cues;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;

/** The questions that the roads of the demonstration yield, each answered again from the path. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:questions;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
class QuestionsOnDemonstrationTests {

    @Autowired
    private RouteSections sections;

    @Autowired
    private Routes routes;

    @Autowired
    private Cues cues;

    private RouteRevision route(RouteSection section) {
        return routes.current(section.routeCode()).orElseThrow();
    }

    /** Thousands of questions of every sort; of each exactly one answer is right, and it is the keyed one. */
    @Test
    void everyQuestionHasOneRightAnswerAndTheRoadSaysTheSame() {
        Map<Sort, Integer> counts = new EnumMap<>(Sort.class);
        int all = 0;
        for (RouteSection section : sections.all()) {
            RouteRevision route = route(section);
            Examiner examiner = new Examiner(route, section, cues.of(section.code()));
            Set<String> keys = new HashSet<>();
            for (Question question : Questions.of(new SectionRoad(route.content(), section, cues.of(section.code())))) {
                String keyed = question.answer().code().isEmpty()
                        ? question.answer().text()
                        : question.answer().code();
                assertThat(examiner.right(question))
                        .as("%s on %s", question, section.code())
                        .containsExactly(keyed);
                assertThat(keys.add(question.key())).as(question.key()).isTrue();
                assertThat(question.options()).doesNotHaveDuplicates().hasSizeBetween(2, 4);
                counts.merge(question.sort(), 1, Integer::sum);
                all++;
            }
        }
        assertThat(counts)
                .as("%s", counts)
                .containsOnlyKeys(EnumSet.complementOf(EnumSet.of(Sort.BY_HAND, Sort.BY_HAND_CRITICAL)));
        assertThat(all).as("%s", counts).isGreaterThan(2_500);
    }

    @Test
    void sameRoadGivesTheSameQuestions() {
        RouteSection section = sections.find("GC-DN").orElseThrow();
        SectionRoad road = new SectionRoad(route(section).content(), section, List.of());
        assertThat(Questions.of(road)).isEqualTo(Questions.of(road)).isNotEmpty();
    }

    /** The right answer does not stand always at one place. */
    @Test
    void rightAnswerStandsAnywhere() {
        RouteSection section = sections.find("ZU-DN").orElseThrow();
        List<Question> questions = Questions.of(new SectionRoad(route(section).content(), section, List.of())).stream()
                .filter(question -> question.options().size() == 4)
                .toList();
        for (int place = 0; place < 4; place++) {
            int at = place;
            assertThat(questions.stream()
                            .filter(question -> question.right() == at)
                            .count())
                    .isBetween(questions.size() / 6L, questions.size() / 3L + 1);
        }
    }
}
