package org.crosshead.route.web;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;

/** A temporary restriction as typed into its form. */
record RestrictionForm(Map<String, String> typed) {

    RestrictionForm {
        typed = Map.copyOf(typed);
    }

    String typed(String field) {
        return typed.getOrDefault(field, "").trim();
    }

    /**
     * Returns the draft.
     *
     * @param unit in which its route is measured
     * @param problems takes what can't be read; if it is not empty afterwards, the draft is not to be used
     */
    RestrictionDraft toDraft(MeasureUnit unit, RouteWords words, List<FormProblem> problems) {
        double from = measure("fromMeasure", unit, words, problems);
        double to = measure("toMeasure", unit, words, problems);
        Optional<Double> limit = Numbers.decimal(typed("limit"));
        if (limit.isEmpty()) {
            problems.add(new FormProblem("limit", words.of("route.refused.number", typed("limit"))));
        }
        return new RestrictionDraft(
                typed("number"),
                typed("routeCode"),
                from,
                to,
                limit.orElse(0.0),
                choice("limitUnit", SpeedUnit.MPH, words, problems),
                choice("scope", Scope.BOTH, words, problems),
                moment("firstMoment", words, problems),
                moment("lastMoment", words, problems),
                typed("reason"));
    }

    private double measure(String field, MeasureUnit unit, RouteWords words, List<FormProblem> problems) {
        Optional<Double> measure = Measures.parse(typed(field), unit);
        if (measure.isEmpty()) {
            problems.add(new FormProblem(field, words.of("route.refused.measure-unreadable." + unit, typed(field))));
        }
        return measure.orElse(0.0);
    }

    /** An hour that the clocks show twice counts as long as possible: from its first time, until its second. */
    private Instant moment(String field, RouteWords words, List<FormProblem> problems) {
        try {
            ZonedDateTime moment = LocalDateTime.parse(typed(field)).atZone(words.zone());
            return (field.equals("lastMoment")
                            ? moment.withLaterOffsetAtOverlap()
                            : moment.withEarlierOffsetAtOverlap())
                    .toInstant();
        } catch (DateTimeParseException ex) {
            problems.add(new FormProblem(field, words.of("route.refused.moment", typed(field))));
            return Instant.EPOCH;
        }
    }

    private <E extends Enum<E>> E choice(String field, E otherwise, RouteWords words, List<FormProblem> problems) {
        Optional<E> chosen = Arrays.stream(otherwise.getDeclaringClass().getEnumConstants())
                .filter(one -> one.name().equals(typed(field)))
                .findFirst();
        if (chosen.isEmpty() && !typed(field).isEmpty()) {
            problems.add(new FormProblem(field, words.of("route.refused.choice", typed(field))));
        }
        return chosen.orElse(otherwise);
    }
}
