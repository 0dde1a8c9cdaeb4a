package org.crosshead.stock.web;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads and writes numbers as people type them in these forms. */
final class Numbers {

    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");

    private Numbers() {}

    static Optional<Double> decimal(String text) {
        String trimmed = text.trim();
        return DECIMAL.matcher(trimmed).matches() ? Optional.of(Double.valueOf(trimmed)) : Optional.empty();
    }

    static Optional<Integer> whole(String text) {
        String trimmed = text.trim();
        return WHOLE.matcher(trimmed).matches() ? Optional.of(Integer.valueOf(trimmed)) : Optional.empty();
    }

    /** As a form takes it back: full stop, no thousands. */
    static String typed(double value) {
        return new DecimalFormat("0.#########", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

    /** As a page shows it: thousands apart, no more places than were entered. */
    static String shown(double value) {
        return new DecimalFormat("#,##0.#########", DecimalFormatSymbols.getInstance(Locale.UK)).format(value);
    }

    static String rounded(double value, int places) {
        return String.format(Locale.UK, "%,." + places + "f", value);
    }
}
