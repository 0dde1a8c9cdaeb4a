package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.CompetenceEvent;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.Subject;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.working.OwnTrains;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What one person knows, and what may be entered about them. */
@Controller
@RequestMapping("/knowledge")
class KnowledgeController {

    private static final int EVENTS_SHOWN = 200;

    private final Knowledge knowledge;
    private final Holdings holdings;
    private final People people;
    private final RouteSections sections;
    private final LocomotiveClasses classes;
    private final OwnTrains ownTrains;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;

    KnowledgeController(
            Knowledge knowledge,
            Holdings holdings,
            People people,
            RouteSections sections,
            LocomotiveClasses classes,
            OwnTrains ownTrains,
            CurrentActor actor,
            Clock clock,
            ZoneId zone) {
        this.knowledge = knowledge;
        this.holdings = holdings;
        this.people = people;
        this.sections = sections;
        this.classes = classes;
        this.ownTrains = ownTrains;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    @GetMapping("/{staffNumber}")
    String person(@PathVariable String staffNumber, Model model) {
        Person person = known(staffNumber);
        boolean own = Long.valueOf(person.id()).equals(actor.get().personId());
        if (!own && !ownTrains.seesAll()) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        List<Person> all = people.all();
        model.addAttribute("person", person);
        model.addAttribute("own", own);
        model.addAttribute("holdings", holdings.of(person.id(), today()));
        model.addAttribute("events", knowledge.latestEvents(person.id(), EVENTS_SHOWN));
        model.addAttribute("shown", EVENTS_SHOWN);
        model.addAttribute("names", new Names(all));
        model.addAttribute("subjects", subjects());
        model.addAttribute("people", all);
        model.addAttribute("kinds", knowledge.offered(person.id()));
        model.addAttribute("today", today());
        model.addAttribute("medical", Kind.FIT);
        return "competence/person";
    }

    private List<Subject> subjects() {
        return Stream.of(
                        sections.all().stream().map(section -> new Subject(Subject.Kind.SECTION, section.code())),
                        classes.all().stream()
                                .map(one -> new Subject(
                                        Subject.Kind.CLASS, one.content().code())),
                        Subject.PERSONAL.stream())
                .flatMap(subjects -> subjects)
                .toList();
    }

    /**
     * What was sent, as it was written.
     *
     * @param subject kind and code with a colon between them
     */
    record Form(
            @Nullable Kind kind,
            @Nullable String subject,
            @Nullable String day,
            @Nullable String other,
            @Nullable String note,
            @Nullable Long struck,
            @Nullable String until,
            @Nullable String born) {}

    @PostMapping("/{staffNumber}")
    String enter(@PathVariable String staffNumber, Form form, RedirectAttributes flash) {
        Person person = known(staffNumber);
        try {
            knowledge.enter(entry(person, form));
            flash.addFlashAttribute("done", "competence.done");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/knowledge/{staffNumber}";
    }

    private Knowledge.Entry entry(Person person, Form form) {
        String note = form.note() == null ? "" : form.note();
        if (form.struck() != null) {
            CompetenceEvent struck = knowledge
                    .event(form.struck())
                    .filter(event -> event.personId() == person.id())
                    .orElseThrow(() -> new ActRefusedException("nothing-to-strike"));
            return new Knowledge.Entry(person.id(), Kind.STRUCK, struck.subject(), today(), null, struck.id(), note);
        }
        Kind kind = form.kind();
        if (kind == null || !knowledge.offered(person.id()).contains(kind)) {
            throw new ActRefusedException("not-offered");
        }
        Long otherId = form.other() == null || form.other().isBlank()
                ? null
                : people.byStaffNumber(form.other())
                        .map(Person::id)
                        .orElseThrow(() -> new ActRefusedException("not-offered"));
        return new Knowledge.Entry(
                person.id(),
                kind,
                subject(form.subject()),
                Typed.day(form.day(), KnowledgeController::noDay),
                otherId,
                null,
                Typed.dayOrNull(form.until(), KnowledgeController::noDay),
                Typed.dayOrNull(form.born(), KnowledgeController::noDay),
                note);
    }

    private Subject subject(@Nullable String typed) {
        return subjects().stream()
                .filter(subject -> (subject.kind() + ":" + subject.code()).equals(typed))
                .findFirst()
                .orElseThrow(() -> new ActRefusedException("not-offered"));
    }

    private Person known(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow(() -> new NotFoundException("person", staffNumber));
    }

    private static RuntimeException noDay() {
        return new ActRefusedException("no-day");
    }
}
