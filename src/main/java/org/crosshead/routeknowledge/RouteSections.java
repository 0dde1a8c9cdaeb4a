package org.crosshead.routeknowledge;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Routes;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The sections that people sign: entered by an inspector, approved by a second person before anybody can sign them. */
@Service
public class RouteSections {

    private static final String SUBJECT = "section";

    private final SectionStore store;
    private final Routes routes;
    private final People people;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    RouteSections(
            SectionStore store,
            Routes routes,
            People people,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ApplicationEventPublisher events) {
        this.events = events;
        this.store = store;
        this.routes = routes;
        this.people = people;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
    }

    public List<RouteSection> all() {
        return store.all();
    }

    /** Returns the sections of some routes. */
    public List<RouteSection> ofRoutes(Set<String> routeCodes) {
        return store.ofRoutes(routeCodes);
    }

    /** Returns those sections of some codes that are laid down. */
    public List<RouteSection> ofCodes(Set<String> codes) {
        return store.ofCodes(codes);
    }

    public Optional<RouteSection> find(String code) {
        return store.find(code);
    }

    /**
     * Stores a section, or changes the one of the same code; it must then be approved anew.
     *
     * @throws SectionRefusedException if anything in it cannot be
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public RouteSection enter(SectionDraft draft) {
        if (draft.code().isBlank() || draft.title().isBlank() || draft.hard().isBlank()) {
            throw new SectionRefusedException("section-words");
        }
        var route = routes.current(draft.routeCode()).orElseThrow(() -> new SectionRefusedException("section-route"));
        boolean within = draft.fromMeasure() >= route.content().fromMeasure()
                && draft.toMeasure() <= route.content().toMeasure()
                && draft.fromMeasure() < draft.toMeasure();
        if (!within) {
            throw new SectionRefusedException("section-extent");
        }
        if (!draft.line().isEmpty() && !route.content().lines().contains(draft.line())) {
            throw new SectionRefusedException("section-line");
        }
        if (!draft.needs().make()) {
            throw new SectionRefusedException("section-needs");
        }
        Long teacherId = teacher(draft.teacher());
        Optional<RouteSection> before = store.find(draft.code());
        if (before.isPresent()) {
            store.update(before.get().id(), draft, teacherId, actor.get().name());
        } else {
            store.insert(draft, teacherId, actor.get().name());
        }
        RouteSection stored = store.find(draft.code()).orElseThrow();
        journal.write(before.isPresent() ? "section.changed" : "section.entered", SUBJECT, stored.id(), draft.code());
        changed(stored);
        return stored;
    }

    private void changed(RouteSection section) {
        events.publishEvent(new SectionChanged(section.code(), section.routeCode()));
    }

    private @Nullable Long teacher(String staffNumber) {
        return staffNumber.isBlank()
                ? null
                : people.byStaffNumber(staffNumber)
                        .map(Person::id)
                        .orElseThrow(() -> new SectionRefusedException("section-teacher"));
    }

    /**
     * Approves a section's risk assessment.
     *
     * @throws SectionRefusedException if it was entered by the same person, is approved already, or has been changed meanwhile
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'ASSESSOR')")
    public void approve(String code, int version) {
        RouteSection section = known(code);
        CurrentActor.Actor acting = actor.get();
        boolean person = acting.accountId() != null;
        if (person && section.enteredBy().equals(acting.name())) {
            throw new SectionRefusedException("section-own");
        }
        if (!store.approve(section.id(), version, acting.name(), clock.instant())) {
            throw new SectionRefusedException("section-changed");
        }
        journal.write("section.approved", SUBJECT, section.id(), code);
        changed(section);
    }

    /**
     * Closes a section from a day on.
     *
     * @throws SectionRefusedException if it is closed already
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public void close(String code, LocalDate from) {
        closed(code, from, "section.closed");
    }

    private void closed(String code, LocalDate from, String entry) {
        RouteSection section = known(code);
        if (!store.close(section.id(), from, actor.get().name())) {
            throw new SectionRefusedException("section-closed-already");
        }
        journal.write(entry, SUBJECT, section.id(), code);
        changed(section);
    }

    /**
     * Opens a closed section again; what that asks for is for whoever keeps what people know.
     *
     * @param closure how, with the day
     * @throws SectionRefusedException if it is not closed
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public void reopen(String code, Closure closure) {
        RouteSection section = known(code);
        if (!store.reopen(section.id(), closure, actor.get().name())) {
            throw new SectionRefusedException("section-not-closed");
        }
        journal.write("section.opened", SUBJECT, section.id(), code + " " + closure.changes());
        changed(section);
    }

    /** Closes a section that others have taken the place of. */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void replaced(String code, LocalDate from) {
        closed(code, from, "section.replaced");
    }

    /** Returns the staff number of who teaches a section; blank where nobody does. */
    public String teacherNumber(RouteSection section) {
        Long teacher = section.teacherId();
        return teacher == null
                ? ""
                : people.find(teacher).map(Person::staffNumber).orElse("");
    }

    private RouteSection known(String code) {
        return store.find(code).orElseThrow(() -> new NotFoundException(SUBJECT, code));
    }
}
