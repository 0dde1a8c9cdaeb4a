package org.crosshead.routeknowledge.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Direction;
import org.crosshead.route.Measures;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathGradient;
import org.crosshead.route.PathLeg;
import org.crosshead.route.PathLimit;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.route.SpeedUnit;
import org.crosshead.route.TrainKind;
import org.crosshead.route.web.RouteDiagram;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.Cues;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The card of a section: all that is met on it in running order, with its limits, gradients, cues and risks. */
@Controller
class SectionCardController {

    private final RouteSections sections;
    private final Routes routes;
    private final Cues cues;
    private final People people;
    private final RouteDiagram diagram;
    private final MessageSource messages;

    SectionCardController(
            RouteSections sections,
            Routes routes,
            Cues cues,
            People people,
            RouteDiagram diagram,
            MessageSource messages) {
        this.sections = sections;
        this.routes = routes;
        this.cues = cues;
        this.people = people;
        this.diagram = diagram;
        this.messages = messages;
    }

    /**
     * A line of the card.
     *
     * @param sort class of the style sheet: feature, limit or gradient
     * @param by detail, and when it can be known where not by day and by night
     */
    record Row(double atM, String at, String sort, String what, String name, String by, List<Cue> cues) {}

    @GetMapping("/sections/{code}/card")
    String card(@PathVariable String code, Model model) {
        RouteSection section = sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
        RouteRevision route = routes.current(section.routeCode())
                .orElseThrow(() -> new NotFoundException("route", section.routeCode()));
        List<Cue> all = cues.of(code);
        Long teacher = section.teacherId();
        model.addAttribute("section", section);
        model.addAttribute("route", route);
        model.addAttribute(
                "teacher",
                teacher == null ? "" : people.find(teacher).map(Person::name).orElse(""));
        model.addAttribute("diagram", diagram.svg(route, section.fromMeasure(), section.toMeasure()));
        model.addAttribute("rows", rows(section, route, all));
        model.addAttribute(
                "stale", all.stream().filter(cue -> cues.isStale(cue, section)).toList());
        model.addAttribute(
                "from", Measures.format(section.fromMeasure(), route.content().measureUnit()));
        model.addAttribute(
                "to", Measures.format(section.toMeasure(), route.content().measureUnit()));
        return "routeknowledge/card";
    }

    private List<Row> rows(RouteSection section, RouteRevision route, List<Cue> all) {
        boolean rises = section.direction() == Direction.RISING;
        List<String> lines = route.content().lines();
        PathGeometry path = PathGeometry.of(
                List.of(new PathLeg(
                        route,
                        rises ? section.fromMeasure() : section.toMeasure(),
                        rises ? section.toMeasure() : section.fromMeasure(),
                        lines.get(rises ? 0 : lines.size() - 1),
                        section.direction(),
                        true)),
                TrainKind.PASSENGER,
                List.of());
        List<Row> rows = new ArrayList<>();
        for (PathGradient gradient : path.gradients()) {
            rows.add(new Row(
                    gradient.fromM(), at(path, gradient.fromM()), "gradient", words(gradient), "", "", List.of()));
        }
        for (PathLimit limit : path.limits()) {
            rows.add(new Row(
                    limit.fromM(),
                    at(path, limit.fromM()),
                    "limit",
                    say(
                            "routeknowledge.limit." + limit.source(),
                            String.format(Locale.ROOT, "%.0f", limit.limit()),
                            limit.limitUnit() == SpeedUnit.MPH ? "mph" : "km/h",
                            at(path, Math.min(limit.toM(), path.lengthM()))),
                    "",
                    "",
                    List.of()));
        }
        for (PathFeature feature : path.features()) {
            if (feature.fromM() >= 0 && feature.fromM() <= path.lengthM()) {
                rows.add(feature(path, feature, all));
            }
        }
        rows.sort(Comparator.comparingDouble(Row::atM));
        return rows;
    }

    private Row feature(PathGeometry path, PathFeature feature, List<Cue> all) {
        boolean day = feature.feature().seenByDay();
        boolean night = feature.feature().seenByNight();
        String by = day && night ? "" : say(day ? "routeknowledge.by-day" : "routeknowledge.by-night");
        return new Row(
                feature.fromM(),
                at(path, feature.fromM()),
                "feature",
                say("route.FeatureKind." + feature.feature().kind()),
                feature.feature().name(),
                (feature.feature().detail() + " " + by).strip(),
                all.stream()
                        .filter(cue ->
                                cue.featureName().equals(feature.feature().name()))
                        .toList());
    }

    private static String at(PathGeometry path, double atM) {
        return path.at(Math.max(0, Math.min(atM, path.lengthM()))).measureText();
    }

    private String words(PathGradient gradient) {
        double value = Math.abs(gradient.value());
        String figure = value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
        String way = gradient.gradient() > 0 ? "rises" : gradient.gradient() < 0 ? "falls" : "level";
        return say("routeknowledge.gradient." + way + "." + gradient.notation(), figure);
    }

    private String say(String code, Object... args) {
        return messages.getMessage(code, args, Locale.UK);
    }
}
