package org.crosshead.briefing.document;

import java.util.List;

/**
 * A sentence as kind and values; the page words it from the message {@code phrase.<kind>} with the terms as {0}, {1} ...
 *
 * @param kind key of the wording, lower case with dots
 */
public record Phrase(String kind, List<Term> terms) {

    public Phrase {
        terms = List.copyOf(terms);
    }

    public static Phrase of(String kind, Term... terms) {
        return new Phrase(kind, List.of(terms));
    }
}
