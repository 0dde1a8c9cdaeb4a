package org.crosshead.route.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteProblem;
import org.crosshead.route.RouteRevision;

/** A route as typed into its form: each list a text of one line an entry. */
final class RouteForm {

    private final Map<String, String> typed;

    RouteForm(Map<String, String> typed) {
        this.typed = Map.copyOf(typed);
    }

    static RouteForm empty() {
        return new RouteForm(Map.of("measureUnit", MeasureUnit.CHAINS.name(), "basedOn", "0"));
    }

    static RouteForm of(RouteRevision revision) {
        RouteDraft draft = revision.content();
        MeasureUnit unit = draft.measureUnit();
        Map<String, String> typed = new HashMap<>();
        typed.put("code", draft.code());
        typed.put("name", draft.name());
        typed.put("measureUnit", unit.name());
        typed.put("risingName", draft.risingName());
        typed.put("fallingName", draft.fallingName());
        typed.put("fromMeasure", Measures.exact(draft.fromMeasure(), unit));
        typed.put("toMeasure", Measures.exact(draft.toMeasure(), unit));
        typed.put("lines", String.join("\n", draft.lines()));
        typed.put("gradients", lines(draft.gradients(), one -> TypedLists.line(one, unit)));
        typed.put("curves", lines(draft.curves(), one -> TypedLists.line(one, unit)));
        typed.put("limits", lines(draft.limits(), one -> TypedLists.line(one, unit)));
        typed.put("features", lines(draft.features(), one -> TypedLists.line(one, unit)));
        if (draft.estimatesAccepted()) {
            typed.put("estimatesAccepted", "yes");
        }
        typed.put("basedOn", Integer.toString(revision.number()));
        return new RouteForm(typed);
    }

    String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    String trimmed(String field) {
        return typed(field).trim();
    }

    boolean estimatesAccepted() {
        return !trimmed("estimatesAccepted").isEmpty();
    }

    RouteForm withCode(String code) {
        Map<String, String> known = new HashMap<>(typed);
        known.put("code", code);
        return new RouteForm(known);
    }

    /** Returns the number of the revision that the form was filled from; what is none was never current. */
    int basedOn() {
        return Numbers.decimal(trimmed("basedOn")).map(Double::intValue).orElse(-1);
    }

    /**
     * Returns the draft.
     *
     * @param problems takes what can't be read; if it is not empty afterwards, the draft is not to be used
     */
    RouteDraft toDraft(RouteWords words, List<FormProblem> problems) {
        MeasureUnit unit = trimmed("measureUnit").equals(MeasureUnit.KILOMETRES.name())
                ? MeasureUnit.KILOMETRES
                : MeasureUnit.CHAINS;
        Reading reading = new Reading(unit, words, problems);
        return new RouteDraft(
                trimmed("code"),
                trimmed("name"),
                unit,
                trimmed("risingName"),
                trimmed("fallingName"),
                reading.measure("fromMeasure"),
                reading.measure("toMeasure"),
                numbered("lines").stream().map(NumberedLine::text).toList(),
                reading.entries("gradients", TypedLists.GRADIENT_FIELDS, TypedLists::gradient),
                reading.entries("curves", TypedLists.CURVE_FIELDS, TypedLists::curve),
                reading.entries("limits", TypedLists.LIMIT_FIELDS, TypedLists::limit),
                reading.entries("features", TypedLists.FEATURE_FIELDS, TypedLists::feature),
                estimatesAccepted());
    }

    /** Puts what the service refused beside the field, an entry under the number of its line. */
    FormProblem beside(RouteProblem problem, RouteWords words) {
        String text = words.of(problem.code(), problem.args().toArray());
        if (problem.list().isEmpty()) {
            return new FormProblem(problem.field(), text);
        }
        List<NumberedLine> lines = numbered(problem.list());
        return problem.index() < 0 || problem.index() >= lines.size()
                ? new FormProblem(problem.list(), text)
                : new FormProblem(
                        problem.list(),
                        words.of(
                                "route.problem.line", lines.get(problem.index()).number(), text));
    }

    private record NumberedLine(int number, String text) {}

    private List<NumberedLine> numbered(String field) {
        List<NumberedLine> numbered = new ArrayList<>();
        String[] lines = typed(field).split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            if (!lines[i].isBlank()) {
                numbered.add(new NumberedLine(i + 1, lines[i].trim()));
            }
        }
        return numbered;
    }

    private static <T> String lines(List<T> entries, Function<T, String> line) {
        return String.join("\n", entries.stream().map(line).toList());
    }

    /** Reads the typed texts in the route's measure. */
    private final class Reading {

        private final MeasureUnit unit;
        private final RouteWords words;
        private final List<FormProblem> problems;

        Reading(MeasureUnit unit, RouteWords words, List<FormProblem> problems) {
            this.unit = unit;
            this.words = words;
            this.problems = problems;
        }

        double measure(String field) {
            Optional<Double> measure = Measures.parse(trimmed(field), unit);
            if (measure.isEmpty()) {
                problems.add(
                        new FormProblem(field, words.of("route.refused.measure-unreadable." + unit, trimmed(field))));
            }
            return measure.orElse(0.0);
        }

        <T> List<T> entries(String list, int fieldCount, Function<Entry, T> read) {
            List<T> entries = new ArrayList<>();
            for (NumberedLine line : numbered(list)) {
                Entry entry = new Entry(line.text(), fieldCount, unit);
                entries.add(read.apply(entry));
                for (Entry.Unreadable problem : entry.problems()) {
                    String text = words.of(problem.code(), problem.args().toArray());
                    problems.add(new FormProblem(list, words.of("route.problem.line", line.number(), text)));
                }
            }
            return entries;
        }
    }
}
