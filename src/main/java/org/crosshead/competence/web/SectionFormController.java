package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.crosshead.competence.SectionSurgery;
import org.crosshead.crew.People;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionDraft;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The form of a section, and splitting and merging. */
@Controller
@RequestMapping("/sections")
class SectionFormController {

    private static final int REFUSED = 422;

    private final RouteSections sections;
    private final SectionSurgery surgery;
    private final Routes routes;
    private final People people;

    SectionFormController(RouteSections sections, SectionSurgery surgery, Routes routes, People people) {
        this.sections = sections;
        this.surgery = surgery;
        this.routes = routes;
        this.people = people;
    }

    /** What was sent, as it was written. */
    record Form(
            @Nullable String code,
            @Nullable String title,
            @Nullable String route,
            @Nullable String from,
            @Nullable String to,
            @Nullable Direction direction,
            @Nullable Band band,
            @Nullable String hard,
            @Nullable String teacher,
            @Nullable String line,
            @Nullable String trips,
            @Nullable String dark,
            @Nullable String driven,
            @Nullable String badWeather,
            @Nullable String refresher) {}

    /** Two names, and a place or another section. */
    record SurgeryForm(
            @Nullable String at,
            @Nullable String other,
            @Nullable String code,
            @Nullable String title,
            @Nullable String secondCode,
            @Nullable String secondTitle) {}

    @GetMapping("/new")
    String blank(Model model) {
        return page(
                new Form("", "", "", "", "", Direction.RISING, Band.USUAL, "", "", "", "0", "0", "0", "0", "0"),
                null,
                model);
    }

    @GetMapping("/{code}/edit")
    String edit(@PathVariable String code, Model model) {
        RouteSection section = section(code);
        MeasureUnit unit = unit(section.routeCode());
        return page(
                new Form(
                        section.code(),
                        section.title(),
                        section.routeCode(),
                        Measures.exact(section.fromMeasure(), unit),
                        Measures.exact(section.toMeasure(), unit),
                        section.direction(),
                        section.band(),
                        section.hard(),
                        sections.teacherNumber(section),
                        section.line(),
                        String.valueOf(section.needs().trips()),
                        String.valueOf(section.needs().dark()),
                        String.valueOf(section.needs().driven()),
                        String.valueOf(section.needs().badWeather()),
                        String.valueOf(section.needs().refresher())),
                section,
                model);
    }

    private RouteSection section(String code) {
        return sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
    }

    private MeasureUnit unit(String routeCode) {
        return routes.current(routeCode)
                .map(route -> route.content().measureUnit())
                .orElse(MeasureUnit.CHAINS);
    }

    private String page(Form form, @Nullable RouteSection section, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("section", section);
        model.addAttribute(
                "routes", routes.all().stream().map(RouteSummary::code).sorted().toList());
        model.addAttribute(
                "lines",
                routes.current(Typed.text(form.route()))
                        .map(route -> route.content().lines())
                        .orElse(List.of()));
        model.addAttribute("directions", Direction.values());
        model.addAttribute("bands", Band.values());
        model.addAttribute("people", people.all());
        model.addAttribute(
                "others",
                section == null
                        ? List.of()
                        : sections.ofRoutes(java.util.Set.of(section.routeCode())).stream()
                                .filter(one -> one.direction() == section.direction())
                                .filter(one -> one.closedFrom() == null)
                                .filter(one -> one.toMeasure() == section.fromMeasure()
                                        || one.fromMeasure() == section.toMeasure())
                                .toList());
        return "competence/section-form";
    }

    @PostMapping
    String save(Form form, Model model, HttpServletResponse response, RedirectAttributes flash) {
        String route = Typed.text(form.route());
        MeasureUnit unit = unit(route);
        try {
            sections.enter(new SectionDraft(
                    Typed.text(form.code()),
                    Typed.text(form.title()),
                    route,
                    measure(form.from(), unit),
                    measure(form.to(), unit),
                    Optional.ofNullable(form.direction())
                            .orElseThrow(() -> new SectionRefusedException("section-words")),
                    Optional.ofNullable(form.band()).orElseThrow(() -> new SectionRefusedException("section-words")),
                    Typed.text(form.hard()),
                    Typed.text(form.teacher()),
                    Typed.text(form.line()),
                    needs(form)));
            flash.addFlashAttribute("done", "competence.section.saved");
            return "redirect:/sections";
        } catch (SectionRefusedException ex) {
            response.setStatus(REFUSED);
            model.addAttribute("refused", "competence.refused." + ex.code());
            return page(form, sections.find(Typed.text(form.code())).orElse(null), model);
        }
    }

    private static double measure(@Nullable String typed, MeasureUnit unit) {
        return Measures.parse(Typed.text(typed), unit)
                .orElseThrow(() -> new SectionRefusedException("section-measure"));
    }

    @PostMapping("/{code}/split")
    String split(@PathVariable String code, SurgeryForm form, RedirectAttributes flash) {
        RouteSection section = section(code);
        return done(
                flash,
                code,
                () -> surgery.split(
                        code,
                        measure(form.at(), unit(section.routeCode())),
                        new SectionSurgery.Named(Typed.text(form.code()), Typed.text(form.title())),
                        new SectionSurgery.Named(Typed.text(form.secondCode()), Typed.text(form.secondTitle()))));
    }

    @PostMapping("/{code}/merge")
    String merge(@PathVariable String code, SurgeryForm form, RedirectAttributes flash) {
        return done(
                flash,
                code,
                () -> surgery.merge(
                        code,
                        Typed.text(form.other()),
                        new SectionSurgery.Named(Typed.text(form.code()), Typed.text(form.title()))));
    }

    private static String done(RedirectAttributes flash, String code, Runnable work) {
        try {
            work.run();
            flash.addFlashAttribute("done", "competence.section.carried");
            return "redirect:/sections";
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
            flash.addAttribute("code", code);
            return "redirect:/sections/{code}/edit";
        }
    }

    private static LearningNeeds needs(Form form) {
        Supplier<RuntimeException> refusal = () -> new SectionRefusedException("section-needs");
        return new LearningNeeds(
                Typed.count(form.trips(), refusal),
                Typed.count(form.dark(), refusal),
                Typed.count(form.driven(), refusal),
                Typed.count(form.badWeather(), refusal),
                Typed.count(form.refresher(), refusal));
    }
}
