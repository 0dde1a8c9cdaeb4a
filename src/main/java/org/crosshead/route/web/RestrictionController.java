package org.crosshead.route.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteRefusedException;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Lists temporary restrictions, and lets an inspector enter and withdraw them. */
@Controller
@RequestMapping("/restrictions")
class RestrictionController {

    private final Restrictions restrictions;
    private final RestrictionPages pages;
    private final Routes routes;
    private final RouteWords words;

    RestrictionController(Restrictions restrictions, RestrictionPages pages, Routes routes, RouteWords words) {
        this.restrictions = restrictions;
        this.pages = pages;
        this.routes = routes;
        this.words = words;
    }

    @GetMapping
    ModelAndView list(HttpServletRequest request) {
        return new ModelAndView(
                "route/restrictions", Map.of("restrictions", pages.all(), "mayEdit", Inspectors.mayEdit(request)));
    }

    @GetMapping("/new")
    ModelAndView fresh(@RequestParam(defaultValue = "") String route, HttpServletRequest request) {
        Inspectors.only(request);
        return form(new RestrictionForm(Map.of("routeCode", route)), List.of(), HttpStatus.OK);
    }

    @PostMapping("/new")
    ModelAndView enter(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        RestrictionForm form = new RestrictionForm(typed);
        List<FormProblem> problems = new ArrayList<>();
        RestrictionDraft draft = form.toDraft(unit(form.typed("routeCode")), words, problems);
        if (!problems.isEmpty()) {
            return form(form, problems, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        try {
            restrictions.enter(draft);
        } catch (RouteRefusedException ex) {
            return form(form, inWords(ex), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return done("route.done.restriction", redirect);
    }

    @GetMapping("/{id}/withdraw")
    ModelAndView ask(@PathVariable long id, HttpServletRequest request) {
        Inspectors.only(request);
        return withdrawal(id, "", List.of(), HttpStatus.OK);
    }

    @PostMapping("/{id}/withdraw")
    ModelAndView withdraw(
            @PathVariable long id, @RequestParam(defaultValue = "") String reason, RedirectAttributes redirect) {
        try {
            restrictions.withdraw(id, reason.trim());
        } catch (RouteRefusedException ex) {
            return withdrawal(id, reason, inWords(ex), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return done("route.done.withdrawn", redirect);
    }

    private ModelAndView withdrawal(long id, String reason, List<FormProblem> problems, HttpStatusCode status) {
        RestrictionPages.Row row = pages.all().stream()
                .filter(one -> one.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotFoundException("restriction", id));
        ModelAndView view = new ModelAndView(
                "route/restriction-withdraw",
                Map.of(
                        "row",
                        row,
                        "page",
                        new RestrictionFormPage(new RestrictionForm(Map.of("reason", reason)), List.of(), problems)));
        view.setStatus(status);
        return view;
    }

    private ModelAndView form(RestrictionForm form, List<FormProblem> problems, HttpStatusCode status) {
        ModelAndView view = new ModelAndView(
                "route/restriction-edit", "page", new RestrictionFormPage(form, routes.all(), problems));
        view.setStatus(status);
        return view;
    }

    private MeasureUnit unit(String routeCode) {
        return routes.all().stream()
                .filter(one -> one.code().equals(routeCode))
                .map(RouteSummary::measureUnit)
                .findFirst()
                .orElse(MeasureUnit.CHAINS);
    }

    private List<FormProblem> inWords(RouteRefusedException refusal) {
        return refusal.problems().stream()
                .map(one -> new FormProblem(
                        one.field(), words.of(one.code(), one.args().toArray())))
                .toList();
    }

    private static ModelAndView done(String code, RedirectAttributes redirect) {
        redirect.addFlashAttribute("done", code);
        ModelAndView done = new ModelAndView("redirect:/restrictions");
        done.setStatus(HttpStatus.SEE_OTHER);
        return done;
    }
}
