package org.crosshead.exchange;

import java.util.List;

/**
 * One thing that is wrong with a file.
 *
 * @param file name of the file; empty where no file is meant
 * @param line line of the file, the header being 1; 0 where the whole file is meant
 * @param column name of the column; empty where the whole line is meant
 * @param code message code: what is wrong and what would do
 * @param args arguments of the message
 */
public record ImportProblem(String file, int line, String column, String code, List<Object> args) {

    public ImportProblem {
        args = List.copyOf(args);
    }
}
