package org.crosshead.stock;

import java.util.List;

/**
 * One thing that is wrong with a draft.
 *
 * @param field field of the draft; a figure is {@code figures.<key>}, a formation's item {@code items[0].count}
 * @param code message code, under {@code stock.refused.} or {@code stock.warning.}
 * @param args arguments of the message
 */
public record StockProblem(String field, String code, List<Object> args) {

    public StockProblem {
        args = List.copyOf(args);
    }

    static StockProblem refused(String field, String code, Object... args) {
        return new StockProblem(field, "stock.refused." + code, List.of(args));
    }

    static StockProblem warning(String field, String code, Object... args) {
        return new StockProblem(field, "stock.warning." + code, List.of(args));
    }
}
