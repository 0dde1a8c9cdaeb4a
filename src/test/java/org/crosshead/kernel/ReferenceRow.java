package org.crosshead.kernel;

import java.util.Objects;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;

/** Cells of a row of a reference table; an empty cell fails the test that reads it. */
public final class ReferenceRow {

    private ReferenceRow() {}

    public static double number(ArgumentsAccessor row, int at) {
        return Objects.requireNonNull(row.getDouble(at), () -> "empty cell " + at);
    }

    public static String text(ArgumentsAccessor row, int at) {
        return Objects.requireNonNull(row.getString(at), () -> "empty cell " + at);
    }
}
