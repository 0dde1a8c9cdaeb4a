package org.crosshead.briefing.document;

import java.util.List;

/**
 * A figure at the top of the page.
 *
 * @param kind key of its label, message {@code key-figure.<kind>}
 * @param value the main value
 * @param further smaller values beside it
 */
public record KeyFigure(String kind, Term value, List<Phrase> further) {

    public KeyFigure {
        further = List.copyOf(further);
    }
}
