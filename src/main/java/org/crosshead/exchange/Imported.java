package org.crosshead.exchange;

import java.io.Serializable;
import java.util.List;

/** How much was imported, file by file. It can wait in a session for the page that shows it. */
public record Imported(List<Count> counts) implements Serializable {

    public Imported {
        counts = List.copyOf(counts);
    }

    /** Lines of one file. */
    public record Count(String fileName, int lines) implements Serializable {}
}
