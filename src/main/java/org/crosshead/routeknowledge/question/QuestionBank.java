package org.crosshead.routeknowledge.question;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Questions that inspectors and assessors write beside those made from the route: each change is a new version, the old ones stay. */
@Service
public class QuestionBank {

    private static final int WORDS_MOST = 500;
    private static final int ANSWER_MOST = 200;

    private final HandQuestionStore store;
    private final RouteSections sections;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;

    QuestionBank(HandQuestionStore store, RouteSections sections, Journal journal, CurrentActor actor, Clock clock) {
        this.store = store;
        this.sections = sections;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
    }

    /**
     * A question as it is written.
     *
     * @param number of the question it is a new version of; 0 for a new one
     */
    public record Draft(
            String sectionCode,
            int number,
            double atMeasure,
            String words,
            String right,
            List<String> wrong,
            String because,
            boolean safetyCritical) {

        public Draft {
            wrong = List.copyOf(wrong);
        }
    }

    /** Returns the latest version of each question on a section, withdrawn ones too. */
    public List<HandQuestion> latest(String sectionCode) {
        Map<Integer, HandQuestion> latest = new TreeMap<>();
        store.of(sectionCode).forEach(question -> latest.put(question.number(), question));
        return List.copyOf(latest.values());
    }

    /** Returns what is asked on a section. */
    List<Question> questions(String sectionCode) {
        return latest(sectionCode).stream()
                .filter(question -> !question.withdrawn())
                .map(QuestionBank::asked)
                .toList();
    }

    /** The answers stand in an order that is the same whenever this version is asked. */
    private static Question asked(HandQuestion question) {
        String key = "BY_HAND/" + question.number() + "/" + question.version();
        List<String> options = new ArrayList<>(question.wrong());
        options.add(question.right());
        Collections.shuffle(options, new Random((question.sectionCode() + key).hashCode()));
        return new Question(
                key,
                question.safetyCritical() ? Sort.BY_HAND_CRITICAL : Sort.BY_HAND,
                List.of(question.words()),
                options.stream().map(Question.Answer::of).toList(),
                options.indexOf(question.right()),
                List.of(question.because()),
                question.atMeasure());
    }

    /**
     * Stores a question, or a new version of one.
     *
     * @throws SectionRefusedException if words or answers are missing, too long or twice the same, or its place is not on the section
     */
    @Transactional
    @PreAuthorize("hasAnyRole('INSPECTOR', 'ASSESSOR')")
    public void write(Draft draft) {
        RouteSection section = sections.find(draft.sectionCode())
                .orElseThrow(() -> new NotFoundException("section", draft.sectionCode()));
        store.lock(draft.sectionCode());
        boolean worded = fits(draft.words(), WORDS_MOST)
                && fits(draft.because(), WORDS_MOST)
                && Stream.concat(Stream.of(draft.right()), draft.wrong().stream())
                        .allMatch(answer -> fits(answer, ANSWER_MOST));
        if (!worded || draft.wrong().isEmpty() || draft.wrong().size() > HandQuestion.WRONG_MOST) {
            throw new SectionRefusedException("question-words");
        }
        List<String> all = new ArrayList<>(draft.wrong());
        all.add(draft.right());
        if (new HashSet<>(all).size() < all.size()) {
            throw new SectionRefusedException("question-twice");
        }
        boolean on = draft.atMeasure() >= section.fromMeasure() && draft.atMeasure() <= section.toMeasure();
        if (!on) {
            throw new SectionRefusedException("question-place");
        }
        List<HandQuestion> there = latest(draft.sectionCode());
        int number = draft.number() == 0
                ? there.stream().mapToInt(HandQuestion::number).max().orElse(0) + 1
                : draft.number();
        int version = draft.number() == 0 ? 1 : known(there, draft.number()).version() + 1;
        store.insert(
                new HandQuestion(
                        draft.sectionCode(),
                        number,
                        version,
                        draft.atMeasure(),
                        draft.words(),
                        draft.right(),
                        draft.wrong(),
                        draft.because(),
                        draft.safetyCritical(),
                        false,
                        actor.get().name()),
                clock.instant());
        journal.write("question.written", "section", section.id(), draft.sectionCode() + " " + number + "/" + version);
    }

    private static boolean fits(String text, int most) {
        return !text.isBlank() && text.length() <= most;
    }

    private static HandQuestion known(List<HandQuestion> there, int number) {
        return there.stream()
                .filter(question -> question.number() == number && !question.withdrawn())
                .findFirst()
                .orElseThrow(() -> new SectionRefusedException("question-gone"));
    }

    /** Withdraws a question: it is asked no more, and stays readable. */
    @Transactional
    @PreAuthorize("hasAnyRole('INSPECTOR', 'ASSESSOR')")
    public void withdraw(String sectionCode, int number) {
        RouteSection section =
                sections.find(sectionCode).orElseThrow(() -> new NotFoundException("section", sectionCode));
        store.lock(sectionCode);
        HandQuestion last = known(latest(sectionCode), number);
        store.insert(
                new HandQuestion(
                        sectionCode,
                        number,
                        last.version() + 1,
                        last.atMeasure(),
                        last.words(),
                        last.right(),
                        last.wrong(),
                        last.because(),
                        last.safetyCritical(),
                        true,
                        actor.get().name()),
                clock.instant());
        journal.write("question.withdrawn", "section", section.id(), sectionCode + " " + number);
    }
}
