package org.crosshead.routeknowledge.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Measures;
import org.crosshead.route.Routes;
import org.crosshead.route.web.RouteDiagram;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.crosshead.routeknowledge.question.Question;
import org.crosshead.routeknowledge.question.SelfTests;
import org.crosshead.routeknowledge.question.Sort;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Questions on a section, one after the other. Nobody is judged by them: they are for the learner. */
@Controller
@RequestMapping("/self-test")
class SelfTestController {

    /** What the drawing would give away. */
    private static final Set<Sort> TOLD_BY_THE_DRAWING = EnumSet.of(Sort.WAY, Sort.GRADIENT, Sort.STEEPEST);

    private final SelfTests tests;
    private final RouteSections sections;
    private final Routes routes;
    private final RouteDiagram diagram;
    private final MessageSource messages;
    private final CurrentActor actor;

    SelfTestController(
            SelfTests tests,
            RouteSections sections,
            Routes routes,
            RouteDiagram diagram,
            MessageSource messages,
            CurrentActor actor) {
        this.tests = tests;
        this.sections = sections;
        this.routes = routes;
        this.diagram = diagram;
        this.messages = messages;
        this.actor = actor;
    }

    /** A section with how whoever looks stands with it. */
    record Line(RouteSection section, SelfTests.Progress progress) {}

    /** A question in words. */
    record Asked(String key, String words, List<String> options, boolean safetyCritical) {}

    /** An answer in words; it waits in the session for the page that shows it. */
    record Answered(String words, String chosen, String right, boolean isRight, String because)
            implements Serializable {}

    /** A place where the section is badly known. */
    record Hard(String at, int asked, int wrong) {}

    @GetMapping
    String list(Model model) {
        model.addAttribute(
                "lines",
                sections.all().stream()
                        .map(section -> new Line(section, tests.progress(section.code())))
                        .toList());
        model.addAttribute("person", actor.get().personId() != null);
        return "routeknowledge/self-tests";
    }

    @GetMapping("/{code}")
    String next(@PathVariable String code, HttpServletRequest request, Model model) {
        RouteSection section = section(code);
        var route = routes.current(section.routeCode())
                .orElseThrow(() -> new NotFoundException("route", section.routeCode()));
        model.addAttribute("section", section);
        model.addAttribute("person", actor.get().personId() != null);
        model.addAttribute("progress", tests.progress(code));
        Optional<Question> next = tests.next(code);
        boolean drawn = next.map(question -> !TOLD_BY_THE_DRAWING.contains(question.sort()))
                .orElse(true);
        model.addAttribute("asked", next.map(this::asked).orElse(null));
        model.addAttribute("diagram", drawn ? diagram.svg(route, section.fromMeasure(), section.toMeasure()) : "");
        boolean office = request.isUserInRole("INSPECTOR")
                || request.isUserInRole("MANAGER")
                || request.isUserInRole("ASSESSOR");
        model.addAttribute("mayWrite", request.isUserInRole("INSPECTOR") || request.isUserInRole("ASSESSOR"));
        model.addAttribute(
                "hard",
                office
                        ? tests.hardPlaces(code).stream()
                                .map(place -> new Hard(
                                        Measures.format(
                                                place.atMeasure(),
                                                route.content().measureUnit()),
                                        place.asked(),
                                        place.wrong()))
                                .toList()
                        : List.of());
        return "routeknowledge/self-test";
    }

    @PostMapping("/{code}")
    String answer(
            @PathVariable String code,
            @RequestParam(defaultValue = "") String key,
            @RequestParam(required = false) @Nullable Integer chosen,
            RedirectAttributes flash) {
        section(code);
        try {
            SelfTests.Outcome outcome = tests.answer(code, key, chosen == null ? -1 : chosen);
            Question question = outcome.question();
            flash.addFlashAttribute(
                    "answered",
                    new Answered(
                            words("question.", question, question.about()),
                            said(question.options().get(outcome.chosen())),
                            said(question.answer()),
                            outcome.right(),
                            words("question.because.", question, question.because())));
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "routeknowledge.refused." + ex.code());
        }
        return "redirect:/self-test/{code}";
    }

    private RouteSection section(String code) {
        return sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
    }

    private Asked asked(Question question) {
        return new Asked(
                question.key(),
                words("question.", question, question.about()),
                question.options().stream().map(this::said).toList(),
                question.sort().isSafetyCritical());
    }

    private String words(String start, Question question, List<String> terms) {
        List<Object> args = new ArrayList<>(terms);
        return messages.getMessage(start + question.sort(), args.toArray(), Locale.UK);
    }

    private String said(Question.Answer answer) {
        return answer.code().isEmpty() ? answer.text() : messages.getMessage(answer.code(), null, Locale.UK);
    }
}
