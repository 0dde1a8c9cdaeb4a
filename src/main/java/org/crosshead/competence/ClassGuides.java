package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.stock.LocomotiveClasses;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is to be known of classes of engines: entered by an inspector, approved by a second person before anybody can sign a class. */
@Service
public class ClassGuides {

    private static final int WORDS_MOST = 2_000;

    private final ClassGuideStore store;
    private final LocomotiveClasses classes;
    private final People people;
    private final Journal journal;
    private final CurrentActor actor;
    private final ApplicationEventPublisher events;

    ClassGuides(
            ClassGuideStore store,
            LocomotiveClasses classes,
            People people,
            Journal journal,
            CurrentActor actor,
            ApplicationEventPublisher events) {
        this.store = store;
        this.classes = classes;
        this.people = people;
        this.journal = journal;
        this.actor = actor;
        this.events = events;
    }

    /**
     * A guide as it is entered.
     *
     * @param teacher staff number; blank where nobody is named yet
     */
    public record Draft(
            String classCode,
            String similarTo,
            String differences,
            String teacher,
            LearningNeeds needs,
            @Nullable LocalDate briefedFrom) {}

    public List<ClassGuide> all() {
        return store.all();
    }

    public Optional<ClassGuide> find(String classCode) {
        return store.find(classCode);
    }

    /**
     * Stores a guide in place of the one of the same class; it must then be approved anew.
     *
     * @throws ActRefusedException if anything in it cannot be, or somebody else enters one of the same class at the same moment
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void enter(Draft draft) {
        known(draft.classCode());
        if (!draft.similarTo().isEmpty()) {
            known(draft.similarTo());
        }
        if (draft.similarTo().equals(draft.classCode())) {
            throw new ActRefusedException("guide-similar");
        }
        if (draft.differences().isBlank() || draft.differences().length() > WORDS_MOST) {
            throw new ActRefusedException("guide-words");
        }
        if (!draft.needs().make()) {
            throw new ActRefusedException("section-needs");
        }
        Long teacherId = draft.teacher().isEmpty()
                ? null
                : people.byStaffNumber(draft.teacher())
                        .map(Person::id)
                        .orElseThrow(() -> new ActRefusedException("section-teacher"));
        put(new ClassGuide(
                draft.classCode(),
                draft.similarTo(),
                draft.differences().strip(),
                teacherId,
                draft.needs(),
                draft.briefedFrom(),
                actor.get().name(),
                null,
                0));
        journal.write("class-guide.entered", "class", 0, draft.classCode());
        events.publishEvent(new ClassGuideChanged(draft.classCode()));
    }

    private void put(ClassGuide guide) {
        try {
            store.put(guide);
        } catch (DuplicateKeyException | ConcurrencyFailureException ex) {
            throw new ActRefusedException("section-changed");
        }
    }

    private void known(String classCode) {
        boolean known =
                classes.all().stream().anyMatch(one -> one.content().code().equals(classCode));
        if (!known) {
            throw new ActRefusedException("guide-class");
        }
    }

    /**
     * Approves a guide.
     *
     * @throws ActRefusedException if it was entered by the same person, is approved already, or has been changed meanwhile
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'ASSESSOR')")
    public void approve(String classCode, int version) {
        CurrentActor.Actor acting = actor.get();
        boolean own = store.find(classCode)
                .filter(guide -> acting.accountId() != null)
                .map(guide -> guide.enteredBy().equals(acting.name()))
                .orElse(false);
        if (own) {
            throw new ActRefusedException("section-own");
        }
        if (!store.approve(classCode, version, acting.name())) {
            throw new ActRefusedException("section-changed");
        }
        journal.write("class-guide.approved", "class", 0, classCode);
        events.publishEvent(new ClassGuideChanged(classCode));
    }
}
