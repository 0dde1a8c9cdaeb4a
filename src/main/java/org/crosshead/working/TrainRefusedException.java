package org.crosshead.working;

import java.util.List;
import java.util.stream.Collectors;

/** The train can't be stored as entered. Nothing was stored. */
public final class TrainRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    TrainRefusedException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }

    /**
     * One thing that is wrong.
     *
     * @param list name of the list it stands in ({@code legs}, {@code calls}, {@code engines}, {@code crew}), or empty
     * @param index place in the list, from 0; -1 outside lists
     * @param field name of the field
     * @param code message code under {@code train.refused.}
     * @param args arguments of the message
     */
    public record Problem(String list, int index, String field, String code, List<Object> args) {

        public Problem {
            args = List.copyOf(args);
        }
    }
}
