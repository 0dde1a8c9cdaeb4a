package org.crosshead.briefing.web;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;

/** Puts a briefing's kinds and values into words. */
public final class BriefingWords {

    private static final Locale LOCALE = Locale.UK;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");
    private static final DateTimeFormatter TO_THE_MINUTE = DateTimeFormatter.ofPattern("HH:mm");
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", LOCALE);
    private static final char OPEN = '\u0001';
    private static final char CLOSE = '\u0002';
    private static final double CHAIN_M = 20.1168;

    private final MessageSource messages;
    private final ZoneId zone;

    BriefingWords(MessageSource messages, String zone) {
        this.messages = messages;
        this.zone = ZoneId.of(zone);
    }

    /**
     * A piece of a sentence.
     *
     * @param figure key of the figure behind it, or null for plain words
     */
    public record Piece(String text, @Nullable String figure) {}

    /** Returns a sentence in pieces; numbers with a figure behind them stand alone. */
    public List<Piece> pieces(Phrase phrase) {
        Object[] marks = new Object[phrase.terms().size()];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = OPEN + String.valueOf(i) + CLOSE;
        }
        String sentence = orElse("phrase." + phrase.kind(), marks, phrase.kind());
        List<Piece> pieces = new ArrayList<>();
        int at = 0;
        while (at < sentence.length()) {
            int open = sentence.indexOf(OPEN, at);
            if (open < 0) {
                pieces.add(new Piece(sentence.substring(at), null));
                break;
            }
            if (open > at) {
                pieces.add(new Piece(sentence.substring(at, open), null));
            }
            int close = sentence.indexOf(CLOSE, open);
            pieces.add(piece(phrase.terms().get(Integer.parseInt(sentence.substring(open + 1, close)))));
            at = close + 1;
        }
        return pieces;
    }

    /** Returns a sentence as plain text. */
    public String text(Phrase phrase) {
        StringBuilder text = new StringBuilder();
        pieces(phrase).forEach(piece -> text.append(piece.text()));
        return text.toString();
    }

    /** Returns a term as a piece of a sentence. */
    public Piece piece(Term term) {
        Place place = term.place();
        if (place != null) {
            String told = landmark(place);
            return new Piece(told.isEmpty() ? measure(place) : measure(place) + " (" + told + ")", null);
        }
        Double value = term.value();
        if (value != null) {
            return new Piece(number(value, term.unit() == null ? "" : term.unit()), term.figure());
        }
        String text = term.text() == null ? "" : term.text();
        return new Piece(orElse("term." + text, null, text), null);
    }

    private String orElse(String code, Object @Nullable [] arguments, String otherwise) {
        return Objects.requireNonNullElse(messages.getMessage(code, arguments, otherwise, LOCALE), otherwise);
    }

    /** Returns the words of a code. */
    public String say(String code) {
        return orElse(code, null, code);
    }

    /** Returns the words of a code with something put in. */
    String say(String code, Object... arguments) {
        return orElse(code, arguments, code);
    }

    /** Returns a number with its unit as a crew reads it. */
    public String number(double value, String unit) {
        return switch (unit) {
            case "1 in" -> {
                String code = value > 0 ? "number.one-in-up" : "number.one-in-down";
                yield messages.getMessage(code, new Object[] {decimal(Math.abs(value), 0)}, LOCALE);
            }
            case "s" -> late(value);
            case "s moved" -> moved(value);
            case "%" -> decimal(value, 0) + "\u00a0%";
            case "" -> decimal(value, 0);
            case "tons of pull", "tonf" -> decimal(value, 1) + "\u00a0" + unit;
            default -> decimal(value, 0) + "\u00a0" + unit;
        };
    }

    private String late(double seconds) {
        long minutes = Math.round(Math.abs(seconds) / 60);
        if (minutes == 0) {
            return say("number.in-time");
        }
        String code = seconds > 0 ? "number.late" : "number.early";
        return messages.getMessage(code, new Object[] {String.valueOf(minutes)}, LOCALE);
    }

    private String moved(double seconds) {
        String code = seconds > 0 ? "number.later" : "number.sooner";
        return messages.getMessage(code, new Object[] {String.valueOf(Math.round(Math.abs(seconds) / 60))}, LOCALE);
    }

    static String decimal(double value, int places) {
        String pattern = places == 0 ? "#,##0" : "#,##0." + "0".repeat(places);
        DecimalFormat format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(LOCALE));
        String text = format.format(value);
        return text.equals("-0") ? "0" : text;
    }

    /** Returns a place by its landmark, with its measure. */
    public String place(Place place) {
        String told = landmark(place);
        String measure = measure(place);
        return told.isEmpty() ? measure : told + " (" + measure + ")";
    }

    /** Returns the measured position. */
    public String measure(Place place) {
        return Measures.format(place.measure(), place.measureUnit());
    }

    /** Returns how a place lies to its landmark; empty where there is none. */
    public String landmark(Place place) {
        return landmark(place, "place.chains");
    }

    /** Returns the same with chains as they are written on posts. */
    String landmarkShort(Place place) {
        return landmark(place, "place.chains-short");
    }

    private String landmark(Place place, String chainsCode) {
        String landmark = place.landmark();
        if (landmark == null) {
            return "";
        }
        if (place.pastLandmark() == 0) {
            return messages.getMessage("place.at", new Object[] {landmark}, LOCALE);
        }
        String code = place.pastLandmark() > 0 ? "place.past" : "place.before";
        String away = length(Math.abs(place.pastLandmark()), place, chainsCode);
        return messages.getMessage(code, new Object[] {away, landmark}, LOCALE);
    }

    private String length(double measure, Place place, String chainsCode) {
        if (place.measureUnit() == MeasureUnit.KILOMETRES) {
            return decimal(Math.round(measure * 1_000 / 10) * 10.0, 0) + "\u00a0m";
        }
        double chains = Math.max(1, Math.rint(measure));
        if (measure * CHAIN_M < CHAIN_M) {
            return decimal(Math.rint(measure * 22 / 5) * 5, 0) + "\u00a0yd";
        }
        boolean one = chains == 1 && chainsCode.equals("place.chains");
        return messages.getMessage(one ? "place.chain" : chainsCode, new Object[] {decimal(chains, 0)}, LOCALE);
    }

    /** Returns a moment by the railway's clock; a dash for none. */
    public String time(@Nullable Instant moment) {
        if (moment == null) {
            return "\u2013";
        }
        var local = moment.atZone(zone).toLocalTime();
        return local.getSecond() == 0 ? local.format(TO_THE_MINUTE) : local.format(TIME);
    }

    /** Returns a moment to the minute by the railway's clock. */
    public String minute(Instant moment) {
        return moment.atZone(zone).format(TO_THE_MINUTE);
    }

    /** Returns a moment to the minute with its day. */
    public String dayAndTime(Instant moment) {
        return moment.atZone(zone).format(DAY_AND_TIME);
    }

    /** Returns the anchor of the row or block in which a figure is shown. */
    public String shownAt(String key) {
        String first = key.split("\\.", 2)[0];
        if (first.matches("[hbtwgf]\\d+")) {
            return first;
        }
        if (first.matches("s\\d+")) {
            return "supplies";
        }
        if (first.startsWith("hand")) {
            return "by-hand";
        }
        if (first.equals("sure")) {
            return "sure";
        }
        if (first.startsWith("braked-for")) {
            return "braking";
        }
        return first.equals("today") || first.equals("limit") ? "today" : "head";
    }

    /** Returns the value of an input or result with four digits that count. */
    public String value(double value, String unit) {
        if (unit.equals("1 in")) {
            return number(value, unit);
        }
        double size = Math.abs(value);
        int places = size >= 1_000 || value == Math.rint(value) ? 0 : size >= 100 ? 1 : size >= 1 ? 3 : 5;
        return decimal(value, places) + (unit.isEmpty() ? "" : "\u00a0" + unit);
    }

    /** Returns the name of a step. */
    public String step(Step step) {
        return say("step." + step.name());
    }

    /** Returns where an input came from. */
    public String source(Input input) {
        String source = input.source();
        if (source.startsWith("step:")) {
            return messages.getMessage("source.step", new Object[] {say("step." + source.substring(5))}, LOCALE);
        }
        return orElse("source." + source.replace(':', '.'), null, source);
    }

    /** Returns where the formula of a step came from. */
    public String source(Step step) {
        return orElse("source." + step.source().replace(':', '.'), null, step.source());
    }
}
