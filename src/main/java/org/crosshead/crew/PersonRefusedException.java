package org.crosshead.crew;

import java.util.List;
import java.util.stream.Collectors;

/** The person can't be stored as entered. Nothing was stored. */
public final class PersonRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<PersonProblem> problems;

    PersonRefusedException(List<PersonProblem> problems) {
        super(problems.stream()
                .map(problem -> problem.field() + " " + problem.code())
                .collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public List<PersonProblem> problems() {
        return problems;
    }
}
