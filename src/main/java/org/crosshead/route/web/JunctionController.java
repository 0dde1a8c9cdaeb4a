package org.crosshead.route.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
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

/** The form by which an inspector says where a route joins another. */
@Controller
@RequestMapping("/routes/{code}/junctions/new")
class JunctionController {

    private final Routes routes;
    private final RouteWords words;

    JunctionController(Routes routes, RouteWords words) {
        this.routes = routes;
        this.words = words;
    }

    @GetMapping
    ModelAndView fresh(@PathVariable String code, HttpServletRequest request) {
        Inspectors.only(request);
        return form(known(code), Map.of(), List.of(), HttpStatus.OK);
    }

    @PostMapping
    ModelAndView enter(
            @PathVariable String code, @RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        RouteSummary route = known(code);
        String other = typed.getOrDefault("otherRouteCode", "");
        List<FormProblem> problems = new ArrayList<>();
        JunctionDraft draft = new JunctionDraft(
                typed.getOrDefault("name", "").trim(),
                route.code(),
                measure(typed, "atMeasure", route.measureUnit(), problems),
                other,
                measure(typed, "otherMeasure", unit(other), problems));
        if (!problems.isEmpty()) {
            return form(route, typed, problems, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        try {
            routes.join(draft);
        } catch (RouteRefusedException ex) {
            return form(route, typed, inWords(ex), HttpStatus.UNPROCESSABLE_CONTENT);
        }
        redirect.addFlashAttribute("done", "route.done.junction");
        ModelAndView done = new ModelAndView("redirect:/routes/" + route.code());
        done.setStatus(HttpStatus.SEE_OTHER);
        return done;
    }

    private double measure(Map<String, String> typed, String field, MeasureUnit unit, List<FormProblem> problems) {
        String text = typed.getOrDefault(field, "").trim();
        return Measures.parse(text, unit).orElseGet(() -> {
            problems.add(new FormProblem(field, words.of("route.refused.measure-unreadable." + unit, text)));
            return 0.0;
        });
    }

    private ModelAndView form(
            RouteSummary route, Map<String, String> typed, List<FormProblem> problems, HttpStatusCode status) {
        List<RouteSummary> others = routes.all().stream()
                .filter(one -> !one.code().equals(route.code()))
                .toList();
        ModelAndView view = new ModelAndView(
                "route/junction-edit",
                Map.of(
                        "code",
                        route.code(),
                        "page",
                        new RestrictionFormPage(new RestrictionForm(typed), others, problems)));
        view.setStatus(status);
        return view;
    }

    private List<FormProblem> inWords(RouteRefusedException refusal) {
        return refusal.problems().stream()
                .map(one -> new FormProblem(
                        one.field(), words.of(one.code(), one.args().toArray())))
                .toList();
    }

    private MeasureUnit unit(String code) {
        return routes.all().stream()
                .filter(one -> one.code().equals(code))
                .map(RouteSummary::measureUnit)
                .findFirst()
                .orElse(MeasureUnit.CHAINS);
    }

    private RouteSummary known(String code) {
        return routes.all().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new NotFoundException("route", code));
    }
}
