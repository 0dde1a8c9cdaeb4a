package org.crosshead.exchange;

import java.util.List;
import java.util.stream.Collectors;

/** The files can't be imported as they are. Nothing was stored. */
public final class ImportRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<ImportProblem> problems;
    private final int total;

    ImportRefusedException(ProblemList problems) {
        super(problems.first().stream()
                .map(problem -> problem.file() + ":" + problem.line() + " " + problem.column() + " " + problem.code()
                        + " " + problem.args())
                .collect(Collectors.joining("; ")));
        this.problems = problems.first();
        this.total = problems.total();
    }

    /** Returns the first of them, as many as anybody would read. */
    public List<ImportProblem> problems() {
        return problems;
    }

    /** Returns how many there are, also of those not listed. */
    public int total() {
        return total;
    }
}
