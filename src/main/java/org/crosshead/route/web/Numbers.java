package org.crosshead.route.web;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads and writes numbers as people type them. */
final class Numbers {

    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

    private Numbers() {}

    static Optional<Double> decimal(String text) {
        return DECIMAL.matcher(text).matches() ? Optional.of(Double.valueOf(text)) : Optional.empty();
    }

    /** With a full stop, without thousands, and no more places than needed. */
    static String typed(double value) {
        return new DecimalFormat("0.#########", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

    /** To one place, with thousands. */
    static String rounded(double value) {
        return new DecimalFormat("#,##0.#", DecimalFormatSymbols.getInstance(Locale.UK)).format(value);
    }
}
