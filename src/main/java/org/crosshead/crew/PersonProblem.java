package org.crosshead.crew;

import java.util.List;

/**
 * One thing that is wrong with a person as entered.
 *
 * @param field field of the draft; a post's is {@code posts[0].lastDay}
 * @param code message code, under {@code crew.refused.}
 * @param args arguments of the message
 */
public record PersonProblem(String field, String code, List<Object> args) {

    public PersonProblem {
        args = List.copyOf(args);
    }

    static PersonProblem refused(String field, String code, Object... args) {
        return new PersonProblem(field, "crew.refused." + code, List.of(args));
    }
}
