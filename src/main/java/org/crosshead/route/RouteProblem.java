package org.crosshead.route;

import java.util.List;

/**
 * One thing that is wrong with a draft.
 *
 * @param list component of the draft that holds the entry, for example {@code gradients}; empty for the draft itself
 * @param index which entry, from 0; -1 where there is no list, or where the whole list is meant
 * @param field field of the draft or of the entry; empty where the whole entry is meant
 * @param code message code, under {@code route.refused.}
 * @param args arguments of the message
 */
public record RouteProblem(String list, int index, String field, String code, List<Object> args) {

    public RouteProblem {
        args = List.copyOf(args);
    }

    static RouteProblem refused(String field, String code, Object... args) {
        return new RouteProblem("", -1, field, "route.refused." + code, List.of(args));
    }
}
