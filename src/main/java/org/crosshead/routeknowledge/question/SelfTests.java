package org.crosshead.routeknowledge.question;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Cues;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Asks people about the road, remembers what they answered, and brings what they did not know back soonest. */
@Service
public class SelfTests {

    private static final int PLACES = 10;
    private static final int KNOWN = 2;

    private final RouteSections sections;
    private final Routes routes;
    private final Cues cues;
    private final AnswerStore store;
    private final QuestionBank bank;
    private final CurrentActor actor;
    private final Clock clock;

    SelfTests(
            RouteSections sections,
            Routes routes,
            Cues cues,
            AnswerStore store,
            QuestionBank bank,
            CurrentActor actor,
            Clock clock) {
        this.sections = sections;
        this.routes = routes;
        this.cues = cues;
        this.store = store;
        this.bank = bank;
        this.actor = actor;
        this.clock = clock;
    }

    /** A place of a section, how often it was asked about and how often wrongly answered. */
    public record Place(double atMeasure, int asked, int wrong) {}

    /**
     * How somebody stands with a section's questions.
     *
     * @param inAll how many there are
     * @param asked how many of them they have been asked
     * @param known answered rightly twice or oftener since the last wrong answer
     * @param due to be asked now: what was answered wrongly, and what has rested long enough
     */
    public record Progress(int inAll, int asked, int known, int due) {}

    /** What came of an answer. */
    public record Outcome(Question question, int chosen, boolean right) {}

    /** What a person's answers say of one question. */
    private record Card(int rightSinceWrong, Instant at) {}

    /** Returns all questions on a section: those made from its route, and those that somebody has written. */
    public List<Question> questions(String sectionCode) {
        return Stream.concat(Questions.of(road(sectionCode)).stream(), bank.questions(sectionCode).stream())
                .toList();
    }

    /** Returns the road of a section as its route is now. */
    public SectionRoad road(String sectionCode) {
        RouteSection section =
                sections.find(sectionCode).orElseThrow(() -> new NotFoundException("section", sectionCode));
        return new SectionRoad(
                routes.current(section.routeCode())
                        .orElseThrow(() -> new NotFoundException("route", section.routeCode()))
                        .content(),
                section,
                cues.of(sectionCode).stream()
                        .filter(cue -> !cues.isStale(cue, section))
                        .toList());
    }

    /**
     * Returns what to ask whoever is logged in: what was answered wrongly and what is due again, the longest waiting first; else something
     * new, safety-critical things before others. Nothing where all has been asked and rests.
     */
    public Optional<Question> next(String sectionCode) {
        Map<String, Card> cards = cards(sectionCode);
        Instant now = clock.instant();
        List<Question> all = questions(sectionCode);
        return all.stream()
                .filter(question -> isDue(question, cards.get(question.key()), now))
                .min(Comparator.comparing((Question question) -> due(question, cards)))
                .or(() -> all.stream()
                        .filter(question -> !cards.containsKey(question.key()))
                        .min(Comparator.comparing((Question question) ->
                                        !question.sort().isSafetyCritical() && cards.size() % 3 != 2)
                                .thenComparing(question -> shuffled(question, person()))));
    }

    /** Each person meets new questions in an order of their own. */
    private static int shuffled(Question question, @Nullable Long personId) {
        return (personId + question.key()).hashCode();
    }

    private static boolean isDue(Question question, @Nullable Card card, Instant now) {
        return card != null
                && !Spacing.due(
                                card.at(),
                                card.rightSinceWrong(),
                                question.sort().isSafetyCritical())
                        .isAfter(now);
    }

    private static Instant due(Question question, Map<String, Card> cards) {
        Card card = cards.get(question.key());
        return card == null
                ? Instant.MAX
                : Spacing.due(card.at(), card.rightSinceWrong(), question.sort().isSafetyCritical());
    }

    public Progress progress(String sectionCode) {
        Map<String, Card> cards = cards(sectionCode);
        List<Question> all = questions(sectionCode);
        Instant now = clock.instant();
        int asked = 0;
        int known = 0;
        int due = 0;
        for (Question question : all) {
            Card card = cards.get(question.key());
            asked += card == null ? 0 : 1;
            known += card != null && card.rightSinceWrong() >= KNOWN ? 1 : 0;
            due += isDue(question, card, now) ? 1 : 0;
        }
        return new Progress(all.size(), asked, known, due);
    }

    /**
     * Takes an answer of whoever is logged in.
     *
     * @throws SectionRefusedException if the log-in belongs to nobody, or the route has changed so that this is no longer asked
     */
    @Transactional
    public Outcome answer(String sectionCode, String questionKey, int chosen) {
        Long personId = person();
        if (personId == null) {
            throw new SectionRefusedException("test-nobody");
        }
        Question question = questions(sectionCode).stream()
                .filter(one -> one.key().equals(questionKey))
                .findFirst()
                .orElseThrow(() -> new SectionRefusedException("test-stale"));
        if (chosen < 0 || chosen >= question.options().size()) {
            throw new SectionRefusedException("test-choose");
        }
        boolean right = chosen == question.right();
        store.insert(personId, sectionCode, question, right, clock.instant());
        return new Outcome(question, chosen, right);
    }

    /** Returns where a section is badly known, by the answers of everybody. */
    public List<Place> hardPlaces(String sectionCode) {
        return store.places(sectionCode, PLACES);
    }

    private @Nullable Long person() {
        return actor.get().personId();
    }

    private Map<String, Card> cards(String sectionCode) {
        Long personId = person();
        Map<String, Card> cards = new HashMap<>();
        if (personId != null) {
            for (AnswerStore.Given given : store.of(personId, sectionCode)) {
                cards.merge(
                        given.questionKey(),
                        new Card(given.correct() ? 1 : 0, given.at()),
                        (card, now) -> new Card(given.correct() ? card.rightSinceWrong() + 1 : 0, given.at()));
            }
        }
        return cards;
    }
}
