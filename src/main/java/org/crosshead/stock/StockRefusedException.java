package org.crosshead.stock;

import java.util.List;
import java.util.stream.Collectors;

/** The draft can't be stored as entered. Nothing was stored. */
public final class StockRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<StockProblem> problems;

    StockRefusedException(List<StockProblem> problems) {
        super(problems.stream().map(StockProblem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<StockProblem> problems() {
        return problems;
    }

    static void throwIfAny(List<StockProblem> problems) {
        if (!problems.isEmpty()) {
            throw new StockRefusedException(problems);
        }
    }
}
