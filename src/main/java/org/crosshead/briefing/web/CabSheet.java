package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Place;
import org.crosshead.kernel.traction.Controls;

/**
 * The whole run for the cab: place, what to do, one figure. Notching up while starting away stands in the line of the start, by speed;
 * braking points that the handling does not tell are lines of their own.
 */
final class CabSheet {

    /** Notches so near after a start belong to it. */
    private static final double STARTING_M = 1_500;

    private static final double NEAR_M = 250;

    private final BriefingDocument document;
    private final BriefingWords words;
    private final List<Line> lines = new ArrayList<>();

    private CabSheet(BriefingDocument document, BriefingWords words) {
        this.document = document;
        this.words = words;
    }

    /**
     * A line of the sheet.
     *
     * @param kind how it is marked: {@code stop}, {@code brake}, {@code fireman} or {@code driver}
     * @param place by its landmark where there is one
     * @param measure empty where the place is told by it already
     * @param more further words, such as the notches of a start; may be empty
     * @param figure the one figure: speed to be expected or reached
     * @param fireman what the fireman does at the same place; empty for nothing
     */
    record Line(
            String kind,
            String place,
            String measure,
            String action,
            List<String> more,
            String figure,
            double atM,
            String fireman) {

        Line with(List<String> further) {
            return new Line(kind, place, measure, action, further, figure, atM, fireman);
        }

        Line withFireman(String told) {
            return new Line(kind, place, measure, action, more, figure, atM, told);
        }
    }

    static List<Line> lines(BriefingDocument document, BriefingWords words) {
        return new CabSheet(document, words).made();
    }

    private List<Line> made() {
        double startedM = Double.NEGATIVE_INFINITY;
        for (HandlingRow row : document.handling()) {
            double atM = row.place().positionM();
            boolean notches = row.action().equals("cocks-shut") || row.action().equals("notch-up");
            if (row.action().equals("start")) {
                startedM = atM;
                lines.add(line("driver", row.place(), told(row), ""));
            } else if (notches && atM - startedM < STARTING_M) {
                addToStart(row);
            } else {
                String kind = row.forFireman() ? "fireman" : row.action().startsWith("brake-") ? "brake" : "driver";
                lines.add(line(
                        kind, row.place(), told(row), words.piece(row.speed()).text()));
            }
        }
        document.braking().stream().filter(point -> !isTold(point)).forEach(this::add);
        lines.sort((a, b) -> Double.compare(a.atM(), b.atM()));
        return folded();
    }

    /** Puts what the fireman does where the driver does something into the driver's line. */
    private List<Line> folded() {
        List<Line> folded = new ArrayList<>();
        for (Line line : lines) {
            int last = folded.size() - 1;
            boolean joins = line.kind().equals("fireman")
                    && last >= 0
                    && folded.get(last).fireman().isEmpty()
                    && !folded.get(last).kind().equals("fireman")
                    && folded.get(last).atM() == line.atM();
            if (joins) {
                folded.set(last, folded.get(last).withFireman(line.action()));
            } else {
                folded.add(line);
            }
        }
        return folded;
    }

    /** Returns what to do in as few words as the cab needs; what has none of its own in those of the table. */
    private String told(HandlingRow row) {
        String code = "briefing.cab.do." + row.action();
        Double cutoff = row.cutoff();
        Double regulator = row.regulator();
        if (row.action().startsWith("brake-")) {
            boolean shuts = regulator != null;
            return words.say(shuts ? code + "-shut" : code, target(row));
        }
        if (row.action().equals("hold-speed")) {
            return words.say(code, words.piece(row.words().terms().get(0)).text());
        }
        String said = cutoff != null && regulator != null && regulator > 0
                ? words.say(code, words.number(100 * cutoff, "%"), words.say(regulator(regulator)))
                : words.say(code);
        return said.equals(code) ? words.text(row.words()) : said;
    }

    private static String regulator(double regulator) {
        return regulator >= 1
                ? "briefing.cab.wide"
                : regulator > Controls.FIRST_VALVE ? "briefing.cab.eased" : "briefing.cab.first-valve";
    }

    /** Returns the speed that a limit is braked to, where it is known. */
    private String target(HandlingRow row) {
        return document.braking().stream()
                .filter(point ->
                        Math.abs(row.place().positionM() - point.brakeAt().positionM()) < NEAR_M)
                .map(point -> words.piece(point.targetSpeed()).text())
                .findFirst()
                .orElse("");
    }

    private void addToStart(HandlingRow row) {
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            if (line.kind().equals("driver")) {
                List<String> more = new ArrayList<>(line.more());
                Double cutoff = Objects.requireNonNull(row.cutoff());
                more.add(words.say(
                        "briefing.cab.at-speed", words.piece(row.speed()).text(), words.number(100 * cutoff, "%")));
                lines.set(i, line.with(more));
                return;
            }
        }
    }

    private boolean isTold(BrakingRow point) {
        return document.handling().stream()
                .anyMatch(row -> row.action().startsWith("brake-")
                        && Math.abs(row.place().positionM() - point.brakeAt().positionM()) < NEAR_M);
    }

    private void add(BrakingRow point) {
        String action = words.say("briefing.cab.brake-for", words.text(point.targetWords()));
        lines.add(line("brake", point.brakeAt(), action, ""));
    }

    /** At a thing itself its name is enough. */
    private static String atLandmark(Place place, String told) {
        String name = place.landmark();
        return place.pastLandmark() == 0 && name != null ? name : told;
    }

    private Line line(String kind, Place place, String action, String figure) {
        String landmark = words.landmarkShort(place);
        return new Line(
                kind,
                landmark.isEmpty() ? words.measure(place) : atLandmark(place, landmark),
                landmark.isEmpty() ? "" : words.measure(place),
                action,
                List.of(),
                figure,
                place.positionM(),
                "");
    }
}
