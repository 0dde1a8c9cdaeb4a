package org.crosshead.briefing.document;

import org.jspecify.annotations.Nullable;

/**
 * One value in a sentence. Exactly one of the three forms is filled: a text taken from stored data, a number with its unit, a
 * place. A number that has a figure behind it names it.
 *
 * @param figure key into {@link BriefingDocument#figures()}, or null
 */
public record Term(
        @Nullable String text,
        @Nullable Double value,
        @Nullable String unit,
        @Nullable Place place,
        @Nullable String figure) {

    public static Term text(String text) {
        return new Term(text, null, null, null, null);
    }

    public static Term number(double value, String unit) {
        return new Term(null, value, unit, null, null);
    }

    public static Term figure(double value, String unit, String figure) {
        return new Term(null, value, unit, null, figure);
    }

    public static Term place(Place place) {
        return new Term(null, null, null, place, null);
    }
}
