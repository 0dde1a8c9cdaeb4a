package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.function.Supplier;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.ClassGuides;
import org.crosshead.crew.People;
import org.crosshead.routeknowledge.LearningNeeds;
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

/** What is to be known of each class: differences from a class it is like, who teaches it, since when a briefing is asked. */
@Controller
@RequestMapping("/class-guides")
class ClassGuideController {

    private final ClassGuides guides;
    private final LocomotiveClasses classes;
    private final People people;

    ClassGuideController(ClassGuides guides, LocomotiveClasses classes, People people) {
        this.guides = guides;
        this.classes = classes;
        this.people = people;
    }

    @GetMapping
    String list(HttpServletRequest request, Model model) {
        model.addAttribute("guides", guides.all());
        model.addAttribute(
                "classes",
                classes.all().stream().map(one -> one.content().code()).sorted().toList());
        model.addAttribute("people", people.all());
        model.addAttribute("names", new Names(people.all()));
        model.addAttribute("mayEnter", request.isUserInRole("INSPECTOR"));
        model.addAttribute("mayApprove", request.isUserInRole("MANAGER") || request.isUserInRole("ASSESSOR"));
        return "competence/class-guides";
    }

    /** What was sent, as it was written. */
    record Form(
            @Nullable String classCode,
            @Nullable String similarTo,
            @Nullable String differences,
            @Nullable String teacher,
            @Nullable String trips,
            @Nullable String dark,
            @Nullable String driven,
            @Nullable String badWeather,
            @Nullable String refresher,
            @Nullable String briefedFrom) {}

    @PostMapping
    String enter(Form form, RedirectAttributes flash) {
        try {
            guides.enter(new ClassGuides.Draft(
                    Typed.text(form.classCode()),
                    Typed.text(form.similarTo()),
                    Typed.text(form.differences()),
                    Typed.text(form.teacher()),
                    needs(form),
                    Typed.dayOrNull(form.briefedFrom(), () -> new ActRefusedException("no-day"))));
            flash.addFlashAttribute("done", "competence.guide.entered");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/class-guides";
    }

    @PostMapping("/{classCode}/approve")
    String approve(@PathVariable String classCode, @RequestParam int version, RedirectAttributes flash) {
        try {
            guides.approve(classCode, version);
            flash.addFlashAttribute("done", "competence.guide.approved-done");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/class-guides";
    }

    private static LearningNeeds needs(Form form) {
        Supplier<RuntimeException> refusal = () -> new ActRefusedException("section-needs");
        return new LearningNeeds(
                Typed.count(form.trips(), refusal),
                Typed.count(form.dark(), refusal),
                Typed.count(form.driven(), refusal),
                Typed.count(form.badWeather(), refusal),
                Typed.count(form.refresher(), refusal));
    }
}
