package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.crosshead.competence.SectionReopening;
import org.crosshead.crew.People;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The sections that people sign: their extent, what makes them hard, who teaches them, whether they are approved. */
@Controller
@RequestMapping("/sections")
class SectionController {

    private final RouteSections sections;
    private final SectionReopening reopening;
    private final Routes routes;
    private final People people;
    private final Clock clock;
    private final ZoneId zone;

    SectionController(
            RouteSections sections,
            SectionReopening reopening,
            Routes routes,
            People people,
            Clock clock,
            ZoneId zone) {
        this.sections = sections;
        this.reopening = reopening;
        this.routes = routes;
        this.people = people;
        this.clock = clock;
        this.zone = zone;
    }

    @GetMapping
    String list(HttpServletRequest request, Model model) {
        model.addAttribute("mayApprove", request.isUserInRole("MANAGER") || request.isUserInRole("ASSESSOR"));
        model.addAttribute("mayEnter", request.isUserInRole("INSPECTOR"));
        model.addAttribute("mayClose", request.isUserInRole("MANAGER"));
        model.addAttribute("sections", sections.all());
        model.addAttribute("names", new Names(people.all()));
        model.addAttribute("measures", new RouteMeasures(routes));
        model.addAttribute("today", today());
        model.addAttribute("drivers", people.all());
        return "competence/sections";
    }

    /** Writes positions as each route is measured. */
    public record RouteMeasures(Routes routes) {

        public String of(String routeCode, double measure) {
            MeasureUnit unit = routes.current(routeCode)
                    .map(route -> route.content().measureUnit())
                    .orElse(MeasureUnit.CHAINS);
            return Measures.format(measure, unit);
        }
    }

    @PostMapping("/{code}/approve")
    String approve(@PathVariable String code, @RequestParam int version, RedirectAttributes flash) {
        try {
            sections.approve(code, version);
            flash.addFlashAttribute("done", "competence.section.approved-done");
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/sections";
    }

    @PostMapping("/{code}/close")
    String close(@PathVariable String code, RedirectAttributes flash) {
        try {
            sections.close(code, today());
            flash.addFlashAttribute("done", "competence.section.closed-done");
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/sections";
    }

    /** What was sent, as it was written. */
    record OpeningForm(
            @Nullable String provedOn,
            @Nullable String prover,
            @Nullable String changes) {}

    @PostMapping("/{code}/open")
    String open(@PathVariable String code, OpeningForm form, RedirectAttributes flash) {
        try {
            SectionReopening.Opened opened = reopening.open(
                    code,
                    new SectionReopening.Opening(
                            today(),
                            Typed.dayOrNull(form.provedOn(), () -> new SectionRefusedException("proving-run")),
                            Typed.text(form.prover()),
                            Typed.text(form.changes())));
            String what = opened.holders() == 0 ? "nobody" : opened.learnAnew() ? "anew" : "done";
            flash.addFlashAttribute("done", "competence.section.opened-" + what);
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/sections#" + code;
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }
}
