package org.crosshead.route;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes positions along a route as its source prints them. */
public final class Measures {

    private static final int CHAINS_PER_MILE = 80;
    private static final Pattern MILES_AND_CHAINS =
            Pattern.compile("(?:(\\d{1,4}) ?m)?(?: ?(\\d{1,6}(?:\\.\\d{1,6})?) ?ch)?");
    private static final Pattern MILES_DOT_CHAINS = Pattern.compile("(\\d{1,4})\\.(\\d\\d)");
    private static final Pattern KILOMETRES = Pattern.compile("(\\d{1,5}(?:\\.\\d{1,6})?)(?: ?km)?");

    private Measures() {}

    /**
     * Returns a position in the route's own measure, or nothing if the text is none.
     *
     * <p>Miles and chains: {@code 12m 34ch}, {@code 12m}, {@code 34ch}, or {@code 12.34} for 12 miles 34 chains, always with two
     * figures of chains; after miles the chains stay below 80. A bare {@code 12} could mean either and is not taken.
     * Kilometres: {@code 12.345}, with or without {@code km}.
     */
    public static Optional<Double> parse(String text, MeasureUnit unit) {
        String trimmed = text.trim().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return unit == MeasureUnit.CHAINS ? chains(trimmed) : kilometres(trimmed);
    }

    /** Returns the position for reading: to the nearest chain (10 m either way), or to the metre on a kilometre route. */
    public static String format(double measure, MeasureUnit unit) {
        return unit == MeasureUnit.CHAINS
                ? milesAndChains(Math.rint(measure))
                : new DecimalFormat("0.000", symbols()).format(measure) + " km";
    }

    /** Returns the position as stored, with its fraction of a chain or metre; {@link #parse} takes it back unchanged. */
    public static String exact(double measure, MeasureUnit unit) {
        return unit == MeasureUnit.CHAINS
                ? milesAndChains(measure)
                : new DecimalFormat("0.000###", symbols()).format(measure) + " km";
    }

    private static Optional<Double> chains(String text) {
        Matcher dotted = MILES_DOT_CHAINS.matcher(text);
        if (dotted.matches()) {
            return chains(dotted.group(1), dotted.group(2));
        }
        Matcher spelled = MILES_AND_CHAINS.matcher(text);
        return text.isEmpty() || !spelled.matches() ? Optional.empty() : chains(spelled.group(1), spelled.group(2));
    }

    @SuppressWarnings("NullAway") // a group that did not take part is null, which the pattern allows for either
    private static Optional<Double> chains(String miles, String chains) {
        double beyond = chains == null ? 0 : Double.parseDouble(chains);
        if (miles == null) {
            return Optional.of(beyond);
        }
        return beyond >= CHAINS_PER_MILE
                ? Optional.empty()
                : Optional.of(Double.parseDouble(miles) * CHAINS_PER_MILE + beyond);
    }

    private static Optional<Double> kilometres(String text) {
        Matcher matcher = KILOMETRES.matcher(text);
        return matcher.matches() ? Optional.of(Double.valueOf(matcher.group(1))) : Optional.empty();
    }

    private static String milesAndChains(double chains) {
        // Millionths first, so that 79.9999999 becomes a mile and not 80 chains.
        double rounded = Math.rint(chains * 1e6) / 1e6;
        double miles = Math.floor(rounded / CHAINS_PER_MILE);
        DecimalFormat format = new DecimalFormat("0.######", symbols());
        return format.format(miles) + "m " + format.format(rounded - miles * CHAINS_PER_MILE) + "ch";
    }

    private static DecimalFormatSymbols symbols() {
        return DecimalFormatSymbols.getInstance(Locale.ROOT);
    }
}
