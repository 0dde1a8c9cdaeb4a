package org.crosshead.competence.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holding.State;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.KnowledgePolicy;
import org.crosshead.competence.Subject;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.StartPageSection;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;

/** In what order a manager is told what lapses. */
class KnowledgeDueTests {

    private static final LocalDate TODAY = LocalDate.of(2030, 5, 6);

    private final Holdings holdings = mock(Holdings.class);
    private final People people = mock(People.class);

    private static Person driver(long id, @Nullable LocalDate lastDay) {
        return new Person(
                id, "T-" + id, "Driver " + id, List.of(new PostHeld(Post.DRIVER, TODAY.minusYears(1), lastDay)));
    }

    private static Holding holding(State state, @Nullable LocalDate last) {
        return new Holding(new Subject(Subject.Kind.SECTION, "S1"), state, last, null, null, List.of());
    }

    @Test
    void whatLapsesNextStandsFirstAndWhoHasLeftIsNotTold() {
        when(people.all())
                .thenReturn(List.of(
                        driver(1, null),
                        driver(2, null),
                        driver(3, null),
                        driver(4, null),
                        driver(5, TODAY.minusDays(1))));
        when(holdings.of(anyCollection(), any()))
                .thenReturn(Map.of(
                        1L, List.of(holding(State.LAPSED, null)),
                        2L, List.of(holding(State.DUE, TODAY.plusDays(40))),
                        3L, List.of(holding(State.DUE, TODAY.plusDays(50)), holding(State.DUE, TODAY.plusDays(3))),
                        4L, List.of(holding(State.HELD, TODAY.plusDays(300))),
                        5L, List.of(holding(State.DUE, TODAY.plusDays(1)))));
        StaticMessageSource messages = new StaticMessageSource();
        messages.setUseCodeAsDefaultMessage(true);
        KnowledgePolicies policies = mock(KnowledgePolicies.class);
        when(policies.on(TODAY)).thenReturn(policy());
        KnowledgeDue due = new KnowledgeDue(
                holdings,
                policies,
                people,
                messages,
                Clock.fixed(Instant.parse("2030-05-06T06:00:00Z"), ZoneOffset.UTC),
                ZoneOffset.UTC);
        assertThat(due.links(new CurrentActor.Actor(1L, null, "Manager", Set.of("MANAGER"))))
                .extracting(StartPageSection.Link::text)
                .containsExactly("Driver 3", "Driver 2", "Driver 1");
        assertThat(due.links(new CurrentActor.Actor(1L, null, "Manager", Set.of("MANAGER")))
                        .get(0)
                        .detail())
                .as("forty days are due, three are urgent")
                .isEqualTo(
                        "S1 competence.state.DUE competence.permit.until; S1 competence.start.due-urgent competence.permit.until");
    }

    private static KnowledgePolicy policy() {
        return new KnowledgePolicy(
                1, TODAY, Map.of(), 12, 24, 60, Set.of(), false, KnowledgePolicy.Regime.SEPARATE_LINE, "A", "B");
    }
}
