package org.crosshead.exchange;

import java.util.List;

/** How much was imported, file by file. */
public record Imported(List<Count> counts) {

    public Imported {
        counts = List.copyOf(counts);
    }

    /** Lines of one file. */
    public record Count(String fileName, int lines) {}
}
