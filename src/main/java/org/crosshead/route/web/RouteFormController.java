package org.crosshead.route.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.RouteChangedException;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRefusedException;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The form by which an inspector enters a route or a further revision of it. */
@Controller
class RouteFormController {

    private static final String NEW = "/routes/new";

    private final Routes routes;
    private final RouteWords words;

    RouteFormController(Routes routes, RouteWords words) {
        this.routes = routes;
        this.words = words;
    }

    @GetMapping(NEW)
    ModelAndView fresh(HttpServletRequest request) {
        Inspectors.only(request);
        return page(new RouteFormPage(NEW, true, RouteForm.empty(), List.of()), HttpStatus.OK);
    }

    @PostMapping(NEW)
    ModelAndView enter(@RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        return store(new RouteFormPage(NEW, true, new RouteForm(typed), List.of()), redirect);
    }

    @GetMapping("/routes/{code}/edit")
    ModelAndView change(@PathVariable String code, HttpServletRequest request) {
        Inspectors.only(request);
        RouteRevision current = current(code);
        return page(new RouteFormPage(action(current), false, RouteForm.of(current), List.of()), HttpStatus.OK);
    }

    @PostMapping("/routes/{code}/edit")
    ModelAndView revise(
            @PathVariable String code, @RequestParam Map<String, String> typed, RedirectAttributes redirect) {
        RouteRevision current = current(code);
        RouteForm form = new RouteForm(typed).withCode(current.content().code());
        return store(new RouteFormPage(action(current), false, form, List.of()), redirect);
    }

    /** Accepts the estimates of the route as the inspector had it before them. */
    @PostMapping("/routes/{code}/estimates")
    String accept(@PathVariable String code, @RequestParam int basedOn, RedirectAttributes redirect) {
        String route = current(code).content().code();
        String done = "route.done.estimates";
        try {
            routes.acceptEstimates(route, basedOn);
        } catch (RouteRefusedException ex) {
            done = "route.done.estimates-none";
        } catch (RouteChangedException ex) {
            done = "route.done.estimates-changed";
        }
        redirect.addFlashAttribute("done", done);
        return "redirect:/routes/" + route;
    }

    private ModelAndView store(RouteFormPage page, RedirectAttributes redirect) {
        RouteForm form = page.form();
        List<FormProblem> problems = new ArrayList<>();
        RouteDraft draft = form.toDraft(words, problems);
        if (!problems.isEmpty()) {
            return refused(page, problems);
        }
        try {
            routes.enter(draft, form.trimmed("reason"), page.fresh() ? 0 : form.basedOn());
        } catch (RouteRefusedException ex) {
            return refused(
                    page,
                    ex.problems().stream().map(one -> form.beside(one, words)).toList());
        } catch (RouteChangedException ex) {
            String code = page.fresh() ? "route.refused.code-taken" : "route.refused.changed-meanwhile";
            String field = page.fresh() ? "code" : "reason";
            return refused(page, List.of(new FormProblem(field, words.of(code, ex.code()))));
        }
        redirect.addFlashAttribute("done", "route.done.route");
        ModelAndView done = new ModelAndView("redirect:/routes/" + draft.code());
        done.setStatus(HttpStatus.SEE_OTHER);
        return done;
    }

    private static String action(RouteRevision revision) {
        return "/routes/" + revision.content().code() + "/edit";
    }

    private RouteRevision current(String code) {
        return routes.current(code).orElseThrow(() -> new NotFoundException("route", code));
    }

    private static ModelAndView refused(RouteFormPage page, List<FormProblem> problems) {
        return page(
                new RouteFormPage(page.action(), page.fresh(), page.form(), problems),
                HttpStatus.UNPROCESSABLE_CONTENT);
    }

    private static ModelAndView page(RouteFormPage page, HttpStatusCode status) {
        ModelAndView view = new ModelAndView("route/route-edit", "page", page);
        view.setStatus(status);
        return view;
    }
}
