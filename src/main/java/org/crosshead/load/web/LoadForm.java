package org.crosshead.load.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.load.LoadQuestion;
import org.crosshead.route.Direction;

/**
 * The question about loads as typed.
 *
 * @param problems field to the code of what is wrong with it, in the order of the form
 */
record LoadForm(Map<String, String> typed, List<Problem> problems) {

    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(\\.\\d{1,3})?");
    private static final double MPH_LEAST = 1;
    private static final double MPH_MOST = 60;
    private static final double PER_CENT_LEAST = 30;
    private static final double PER_CENT_MOST = 100;
    private static final double PER_CENT = 100;

    LoadForm {
        typed = Map.copyOf(typed);
        problems = List.copyOf(problems);
    }

    /** What is wrong with a field. */
    record Problem(String field, String code) {}

    static LoadForm of(Map<String, String> typed) {
        return new LoadForm(typed, List.of());
    }

    public String of(String field, String otherwise) {
        return typed.getOrDefault(field, otherwise).trim();
    }

    public boolean isWrong(String field) {
        return problems.stream().anyMatch(problem -> problem.field().equals(field));
    }

    /** Returns the question, or the form with what is wrong in it. */
    Optional<LoadQuestion> question(List<Problem> found) {
        double mph = number("speed", "10", MPH_LEAST, MPH_MOST, "load.refused.speed", found);
        double perCent = number("pressure", "75", PER_CENT_LEAST, PER_CENT_MOST, "load.refused.pressure", found);
        Direction direction = word(Direction.values(), "direction", found);
        RailState rail = word(RailState.values(), "rail", found);
        return found.isEmpty()
                ? Optional.of(new LoadQuestion(
                        of("route", ""),
                        direction,
                        !of("tenderFirst", "").isEmpty(),
                        of("class", ""),
                        of("kind", ""),
                        rail,
                        mph,
                        perCent / PER_CENT))
                : Optional.empty();
    }

    LoadForm with(List<Problem> found) {
        return new LoadForm(typed, new ArrayList<>(found));
    }

    private double number(String field, String otherwise, double least, double most, String code, List<Problem> found) {
        String text = of(field, otherwise);
        double value = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!(value >= least && value <= most)) {
            found.add(new Problem(field, code));
        }
        return value;
    }

    private <E extends Enum<E>> E word(E[] values, String field, List<Problem> found) {
        for (E value : values) {
            if (value.name().equals(of(field, values[0].name()))) {
                return value;
            }
        }
        found.add(new Problem(field, "load.refused.choose"));
        return values[0];
    }
}
