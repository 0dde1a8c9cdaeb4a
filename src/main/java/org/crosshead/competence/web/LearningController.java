package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningBookings;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.crew.People;
import org.crosshead.platform.CurrentActor;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.stock.LocomotiveClasses;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who learns what, how far they have come, and on which trains. */
@Controller
@RequestMapping("/learning")
class LearningController {

    private final LearningPlans plans;
    private final LearningTurns turns;
    private final LearningBookings bookings;
    private final RouteSections sections;
    private final LocomotiveClasses classes;
    private final People people;
    private final CurrentActor actor;

    LearningController(
            LearningPlans plans,
            LearningTurns turns,
            LearningBookings bookings,
            RouteSections sections,
            LocomotiveClasses classes,
            People people,
            CurrentActor actor) {
        this.plans = plans;
        this.turns = turns;
        this.bookings = bookings;
        this.sections = sections;
        this.classes = classes;
        this.people = people;
        this.actor = actor;
    }

    /**
     * A booked turn, in words.
     *
     * @param subjects what can be told of; empty where whoever looks does not teach in it, or it has not come
     */
    record TurnRow(
            LearningTurn turn, String learner, String teacher, boolean teaches, boolean dark, List<Subject> subjects) {}

    @GetMapping
    String list(HttpServletRequest request, Model model) {
        boolean office = isOffice(request);
        boolean all = office || request.isUserInRole("ASSESSOR");
        Names names = new Names(people.all());
        model.addAttribute("office", office);
        model.addAttribute("plans", plans.visible(all));
        model.addAttribute(
                "turns",
                turns.visible(all).stream().map(turn -> row(turn, names)).toList());
        model.addAttribute("names", names);
        model.addAttribute("me", actor.get().personId());
        model.addAttribute("people", office ? people.all() : List.of());
        model.addAttribute("subjects", office ? subjects() : List.of());
        return "competence/learning";
    }

    private static boolean isOffice(HttpServletRequest request) {
        return request.isUserInRole("MANAGER") || request.isUserInRole("INSPECTOR");
    }

    private TurnRow row(LearningTurn turn, Names names) {
        Long me = actor.get().personId();
        boolean teaches = me != null && me == turn.teacherId();
        LearningTurns.Known known = turns.known(turn);
        return new TurnRow(
                turn,
                names.of(turn.learnerId()),
                names.of(turn.teacherId()),
                teaches,
                known.dark(),
                teaches && known.come() ? known.subjects() : List.of());
    }

    private List<Subject> subjects() {
        return Stream.concat(
                        sections.all().stream()
                                .filter(section -> section.closedFrom() == null)
                                .map(section -> new Subject(Subject.Kind.SECTION, section.code())),
                        classes.all().stream()
                                .map(one -> new Subject(
                                        Subject.Kind.CLASS, one.content().code())))
                .toList();
    }

    /** What was sent, as it was written. */
    record PlanForm(
            @Nullable String person,
            @Nullable String subject,
            @Nullable String until) {}

    @PostMapping
    String open(PlanForm form, RedirectAttributes flash) {
        return done(flash, "competence.learning.opened", () -> {
            plans.open(
                    Typed.text(form.person()),
                    subject(form.subject()),
                    Typed.dayOrNull(form.until(), () -> new ActRefusedException("no-day")));
        });
    }

    @PostMapping("/{id}/close")
    String close(@PathVariable long id, RedirectAttributes flash) {
        return done(flash, "competence.learning.closed", () -> plans.close(id));
    }

    @GetMapping("/{id}")
    String plan(@PathVariable long id, Model model) {
        LearningPlans.Progress progress = plans.progress(id);
        model.addAttribute("progress", progress);
        model.addAttribute("chances", bookings.chances(progress.plan()));
        model.addAttribute("names", new Names(people.all()));
        return "competence/learning-plan";
    }

    @PostMapping("/{id}/book")
    String book(@PathVariable long id, @RequestParam long train, @RequestParam long teacher, RedirectAttributes flash) {
        return done(flash, "competence.learning.booked", () -> bookings.book(id, train, teacher));
    }

    /** What a teacher has sent; a box that is not ticked is null. */
    record TellForm(
            @Nullable List<String> subject,
            @Nullable String drove,
            @Nullable String dark,
            @Nullable String weather,
            @Nullable String note) {}

    @PostMapping("/turns/{id}/tell")
    String tell(@PathVariable long id, TellForm form, RedirectAttributes flash) {
        return done(flash, "competence.learning.told", () -> {
            List<String> typed = form.subject() == null ? List.of() : form.subject();
            Set<Subject> told = typed.stream().map(this::subject).collect(Collectors.toSet());
            turns.tell(
                    id,
                    new LearningTurns.Telling(
                            told,
                            form.drove() != null,
                            form.dark() != null,
                            form.weather() != null,
                            Typed.text(form.note())));
        });
    }

    @PostMapping("/turns/{id}/not-run")
    String notRun(@PathVariable long id, RedirectAttributes flash) {
        return done(flash, "competence.learning.not-run-done", () -> turns.notRun(id));
    }

    private static String done(RedirectAttributes flash, String said, Runnable work) {
        try {
            work.run();
            flash.addFlashAttribute("done", said);
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/learning";
    }

    private Subject subject(@Nullable String typed) {
        return subjects().stream()
                .filter(subject -> (subject.kind() + ":" + subject.code()).equals(typed))
                .findFirst()
                .orElseThrow(() -> new ActRefusedException("not-offered"));
    }
}
