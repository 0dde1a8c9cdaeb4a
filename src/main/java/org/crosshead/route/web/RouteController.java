package org.crosshead.route.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.Measures;
import org.crosshead.route.RevisionNote;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Lists routes, and shows one with its gradient diagram as it is or as it was. */
@Controller
class RouteController {

    private final Routes routes;
    private final RoutePageWriter writer;
    private final RouteDiagram diagram;
    private final RestrictionPages restrictions;

    RouteController(Routes routes, RoutePageWriter writer, RouteDiagram diagram, RestrictionPages restrictions) {
        this.routes = routes;
        this.writer = writer;
        this.diagram = diagram;
        this.restrictions = restrictions;
    }

    /** A route in the list. */
    record ListRow(String code, String name, String length, int revision) {}

    /** A junction as seen from one of its routes. */
    record JunctionRow(String at, String name, String otherCode, String otherAt) {}

    /** A revision in the list of them. */
    record RevisionRow(int number, String madeAt, String madeBy, String reason) {}

    @GetMapping("/routes")
    String list(Model model, HttpServletRequest request) {
        model.addAttribute("routes", routes.all().stream().map(this::row).toList());
        model.addAttribute("mayEdit", Inspectors.mayEdit(request));
        return "route/routes";
    }

    @GetMapping("/routes/{code}")
    String show(@PathVariable String code, Model model, HttpServletRequest request) {
        RouteRevision revision = routes.current(code).orElseThrow(() -> new NotFoundException("route", code));
        return page(revision, true, model, request);
    }

    @GetMapping("/routes/{code}/revisions/{number}")
    String showRevision(@PathVariable String code, @PathVariable int number, Model model, HttpServletRequest request) {
        RouteRevision revision = routes.revision(code, number)
                .orElseThrow(() -> new NotFoundException("route revision", code + " " + number));
        int newest = routes.history(code).get(0).number();
        return page(revision, number == newest, model, request);
    }

    private String page(RouteRevision revision, boolean current, Model model, HttpServletRequest request) {
        String code = revision.content().code();
        model.addAttribute("page", writer.page(revision));
        model.addAttribute("diagram", diagram.svg(revision));
        model.addAttribute("current", current);
        model.addAttribute("mayEdit", current && Inspectors.mayEdit(request));
        model.addAttribute(
                "revisions", routes.history(code).stream().map(this::row).toList());
        model.addAttribute("junctions", junctions(code));
        model.addAttribute("restrictions", current ? restrictions.heldOn(code) : List.of());
        return "route/route";
    }

    private ListRow row(RouteSummary summary) {
        return new ListRow(
                summary.code(),
                summary.name(),
                writer.length(summary.length(), summary.measureUnit()),
                summary.revisionNumber());
    }

    private RevisionRow row(RevisionNote note) {
        return new RevisionRow(note.number(), writer.moment(note.madeAt()), note.madeBy(), note.reason());
    }

    private List<JunctionRow> junctions(String code) {
        return routes.junctions().stream()
                .filter(one ->
                        one.routeCode().equals(code) || one.otherRouteCode().equals(code))
                .map(one -> one.routeCode().equals(code) ? row(one) : row(turned(one)))
                .toList();
    }

    private JunctionRow row(JunctionDraft junction) {
        return new JunctionRow(
                at(junction.routeCode(), junction.atMeasure()),
                junction.name(),
                junction.otherRouteCode(),
                at(junction.otherRouteCode(), junction.otherMeasure()));
    }

    private String at(String code, double measure) {
        return routes.all().stream()
                .filter(one -> one.code().equals(code))
                .map(one -> Measures.exact(measure, one.measureUnit()))
                .findFirst()
                .orElse("");
    }

    private static JunctionDraft turned(JunctionDraft one) {
        return new JunctionDraft(
                one.name(), one.otherRouteCode(), one.otherMeasure(), one.routeCode(), one.atMeasure());
    }
}
