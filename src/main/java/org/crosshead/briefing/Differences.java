package org.crosshead.briefing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Heading;
import org.crosshead.briefing.document.KeyFigure;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Since.Change;
import org.crosshead.briefing.document.Term;
import org.crosshead.briefing.document.TimeRow;
import org.jspecify.annotations.Nullable;

/**
 * What a crew that knows one issue must know of the next: what goes with the train, which sentences of the day, points and braking
 * distances are new, gone or other, and which times move by a minute or more. Figures count as other when they differ by more
 * than they are read to.
 */
final class Differences {

    /** A point of the same kind told less than this from where it was is the same point. */
    private static final double SAME_PLACE_M = 400;

    private static final double MOVED_M = 100;
    private static final double SHARE_READ = 0.02;
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final BriefingDocument before;
    private final BriefingDocument after;
    private final List<Change> found = new ArrayList<>();

    private Differences(BriefingDocument before, BriefingDocument after) {
        this.before = before;
        this.after = after;
    }

    /** Returns the differences of two briefings of one train; empty if a reader would see none. */
    static List<Change> between(BriefingDocument before, BriefingDocument after) {
        Differences differences = new Differences(before, after);
        differences.withTheTrain();
        differences.keyFigures();
        differences.today();
        differences.handling();
        differences.braking();
        differences.times();
        return List.copyOf(differences.found);
    }

    private void add(String kind, @Nullable Place place, @Nullable Phrase now, @Nullable Phrase was) {
        found.add(new Change(kind, place, now, was == null ? null : plain(was)));
    }

    /** A figure of the issue before has no working in this one. */
    private static Phrase plain(Phrase phrase) {
        return new Phrase(
                phrase.kind(),
                phrase.terms().stream()
                        .map(term -> new Term(term.text(), term.value(), term.unit(), term.place(), null))
                        .toList());
    }

    private void withTheTrain() {
        Heading old = before.heading();
        Heading next = after.heading();
        changed("formation", formation(next), formation(old));
        changed(
                "rail",
                Phrase.of("change.rail", Term.text("rail." + next.rail())),
                Phrase.of("change.rail", Term.text("rail." + old.rail())));
        changed("engine", engines(next), engines(old));
        changed("crew", crew(next), crew(old));
    }

    private void changed(String kind, Phrase now, Phrase was) {
        if (!now.equals(was)) {
            add(kind, null, now, was);
        }
    }

    private static Phrase formation(Heading heading) {
        String name = heading.formation();
        return name == null ? Phrase.of("change.light-engine") : Phrase.of("change.text", Term.text(name));
    }

    private static Phrase engines(Heading heading) {
        return Phrase.of(
                "change.text",
                Term.text(String.join(
                        ", ",
                        heading.engines().stream()
                                .map(Heading.EngineLine::number)
                                .toList())));
    }

    private static Phrase crew(Heading heading) {
        return Phrase.of(
                "change.text",
                Term.text(String.join(
                        ", ",
                        heading.crew().stream().map(Heading.CrewLine::name).toList())));
    }

    private void keyFigures() {
        for (KeyFigure figure : after.keyFigures()) {
            before.keyFigures().stream()
                    .filter(old -> old.kind().equals(figure.kind()) && differ(old.value(), figure.value()))
                    .forEach(old -> add(
                            "figure",
                            null,
                            Phrase.of("change.figure." + figure.kind(), figure.value()),
                            Phrase.of("change.value", old.value())));
        }
    }

    private static boolean differ(Term old, Term next) {
        Double was = old.value();
        Double is = next.value();
        if (was == null || is == null || !Objects.equals(old.unit(), next.unit())) {
            return !Objects.equals(old.text(), next.text()) || !Objects.equals(was, is);
        }
        return Math.abs(is - was) > SHARE_READ * Math.max(Math.abs(is), Math.abs(was));
    }

    private void today() {
        after.today().stream()
                .filter(sentence -> lacks(before, sentence))
                .forEach(sentence -> add("today-new", null, sentence, null));
        before.today().stream()
                .filter(sentence -> lacks(after, sentence))
                .forEach(sentence -> add("today-gone", null, null, sentence));
    }

    /** Two sentences of one kind count as the same if they are about the same thing: their first words or first place. */
    private static boolean lacks(BriefingDocument document, Phrase sentence) {
        return document.today().stream()
                .filter(other -> other.kind().equals(sentence.kind()))
                .noneMatch(other -> sentence.terms().isEmpty()
                        || sameSubject(other.terms().get(0), sentence.terms().get(0)));
    }

    private static boolean sameSubject(Term one, Term two) {
        if (one.place() != null && two.place() != null) {
            return apart(one.place(), two.place()) <= SAME_PLACE_M;
        }
        return Objects.equals(one.text(), two.text());
    }

    private static double apart(Place one, Place two) {
        return Math.abs(one.positionM() - two.positionM());
    }

    private void handling() {
        for (HandlingRow row : after.handling()) {
            HandlingRow old = nearest(before.handling(), row);
            if (old == null) {
                add("point-new", row.place(), row.words(), null);
            } else if (!plain(old.words()).equals(plain(row.words()))) {
                add("point-changed", row.place(), row.words(), old.words());
            } else if (apart(old.place(), row.place()) > MOVED_M) {
                add("point-moved", row.place(), row.words(), Phrase.of("change.value", Term.place(old.place())));
            }
        }
        before.handling().stream()
                .filter(old -> nearest(after.handling(), old) == null)
                .forEach(old -> add("point-gone", old.place(), null, old.words()));
    }

    private static @Nullable HandlingRow nearest(List<HandlingRow> rows, HandlingRow row) {
        return rows.stream()
                .filter(other -> other.action().equals(row.action()) && other.forFireman() == row.forFireman())
                .filter(other -> apart(other.place(), row.place()) <= SAME_PLACE_M)
                .min((one, two) -> Double.compare(apart(one.place(), row.place()), apart(two.place(), row.place())))
                .orElse(null);
    }

    private void braking() {
        for (BrakingRow row : after.braking()) {
            BrakingRow old = sameTarget(before.braking(), row);
            if (old == null) {
                add("braking-new", row.brakeAt(), row.targetWords(), null);
            } else if (differ(old.serviceDistance(), row.serviceDistance())) {
                add(
                        "braking-distance",
                        row.brakeAt(),
                        Phrase.of("change.value", row.serviceDistance()),
                        Phrase.of("change.value", old.serviceDistance()));
            }
        }
        before.braking().stream()
                .filter(old -> sameTarget(after.braking(), old) == null)
                .forEach(old -> add("braking-gone", old.brakeAt(), null, old.targetWords()));
    }

    private static @Nullable BrakingRow sameTarget(List<BrakingRow> rows, BrakingRow row) {
        return rows.stream()
                .filter(other -> plain(other.targetWords()).equals(plain(row.targetWords())))
                .filter(other -> apart(other.targetPlace(), row.targetPlace()) <= MOVED_M)
                .findFirst()
                .orElse(null);
    }

    private void times() {
        for (TimeRow row : after.times()) {
            before.times().stream()
                    .filter(old -> old.name().equals(row.name()) && apart(old.place(), row.place()) <= MOVED_M)
                    .findFirst()
                    .ifPresent(old -> time(old, row));
        }
    }

    private void time(TimeRow old, TimeRow row) {
        if (!Objects.equals(old.bookedArrival(), row.bookedArrival())
                || !Objects.equals(old.bookedDeparture(), row.bookedDeparture())) {
            add("booked", null, Phrase.of("change.text", Term.text(row.name())), null);
        }
        Instant was = old.forecastArrival();
        Instant is = row.forecastArrival();
        if (was == null && is == null) {
            return;
        }
        if (was == null || is == null) {
            add(is == null ? "not-reached" : "reached", null, Phrase.of("change.text", Term.text(row.name())), null);
        } else if (Duration.between(was, is).abs().compareTo(MINUTE) >= 0) {
            Term later = Term.number((double) Duration.between(was, is).toSeconds(), "s moved");
            add("forecast", null, Phrase.of("change.forecast", Term.text(row.name()), later), null);
        }
    }
}
