package org.crosshead.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.competence.ClassGuides;
import org.crosshead.competence.CompetenceEvent;
import org.crosshead.competence.Subject;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.routeknowledge.SectionDraft;
import org.jspecify.annotations.Nullable;

/** Reads the sections that people sign, and what is known of people from before. */
final class KnowledgeReader {

    private final Sheets sheets;
    private final MeasureUnits units;
    private final Moments moments;

    KnowledgeReader(Sheets sheets, MeasureUnits units, Moments moments) {
        this.sheets = sheets;
        this.units = units;
        this.moments = moments;
    }

    /**
     * Something entered about a person.
     *
     * @param other staff number; blank for nobody
     */
    record EventDraft(
            String staffNumber,
            CompetenceEvent.Kind kind,
            Subject subject,
            LocalDate day,
            String other,
            @Nullable LocalDate until,
            String note) {}

    List<Located<SectionDraft>> sections() {
        return sheets.lines(ImportFile.SECTIONS).stream().map(this::section).toList();
    }

    List<Located<Cue>> cues() {
        return sheets.lines(ImportFile.CUES).stream()
                .map(line -> new Located<>(
                        new Cue(
                                line.text("section_code"),
                                line.text("feature_name"),
                                line.word("tells", Cue.Tells.class),
                                line.text("meaning"),
                                line.text("missed")),
                        line,
                        Map.of()))
                .toList();
    }

    List<Located<EventDraft>> events() {
        return sheets.lines(ImportFile.KNOWLEDGE).stream().map(this::event).toList();
    }

    private Located<SectionDraft> section(Line line) {
        Optional<MeasureUnit> unit = units.of(line, "route_code");
        SectionDraft draft = new SectionDraft(
                line.text("code"),
                line.text("title"),
                line.text("route_code"),
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                line.word("direction", Direction.class),
                line.word("band", Band.class),
                line.text("hard"),
                line.text("teacher"),
                line.text("line"),
                needs(line));
        return new Located<>(draft, line, Map.of());
    }

    private static LearningNeeds needs(Line line) {
        return new LearningNeeds(
                line.whole("trips"),
                line.whole("trips_dark"),
                line.whole("trips_driven"),
                line.whole("trips_bad_weather"),
                line.whole("trips_refresher"));
    }

    List<Located<ClassGuides.Draft>> guides() {
        return sheets.lines(ImportFile.CLASS_GUIDES).stream()
                .map(line -> new Located<>(
                        new ClassGuides.Draft(
                                line.text("class_code"),
                                line.text("similar_to"),
                                line.text("differences"),
                                line.text("teacher"),
                                needs(line),
                                moments.dayOrNull(line, "briefed_from")),
                        line,
                        Map.of()))
                .toList();
    }

    private Located<EventDraft> event(Line line) {
        EventDraft draft = new EventDraft(
                line.text("staff_number"),
                line.word("event", CompetenceEvent.Kind.class),
                new Subject(line.word("subject", Subject.Kind.class), line.text("subject_code")),
                moments.day(line, "day"),
                line.text("other"),
                line.text("until").isBlank() ? null : moments.day(line, "until"),
                line.text("note"));
        return new Located<>(draft, line, Map.of());
    }
}
