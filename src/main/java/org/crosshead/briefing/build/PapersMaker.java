package org.crosshead.briefing.build;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.crosshead.briefing.Policy.PolicyFigure;
import org.crosshead.briefing.build.TrainInputs.Consist;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.briefing.document.Heading;
import org.crosshead.briefing.document.Inputs;
import org.crosshead.briefing.document.NoteRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.SourceRow;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.traction.ShortMove.Move;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.Restriction;
import org.crosshead.stock.FigureEntry;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.ShortMoves;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.working.TrainDraft;

/** Makes what is taken over from the records: heading, notes, sources, inputs. */
final class PapersMaker {

    /** How long the regulator is held open in the short movement that is told. */
    private static final double BURST_S = 2;

    private final TrainInputs inputs;

    PapersMaker(TrainInputs inputs) {
        this.inputs = inputs;
    }

    Heading heading() {
        TrainDraft content = inputs.content();
        TrainDraft.Call first = content.calls().get(0);
        TrainDraft.Call last = content.calls().get(content.calls().size() - 1);
        boolean tenderFirst = content.legs().get(0).tenderFirst();
        return new Heading(
                content.code(),
                content.title(),
                content.day(),
                content.kind(),
                first.place(),
                Objects.requireNonNull(first.departure()),
                last.place(),
                Objects.requireNonNull(last.arrival()),
                inputs.zone(),
                inputs.engines().stream()
                        .map(engine -> new Heading.EngineLine(
                                engine.turn().engineNumber(),
                                engine.engine().content().name(),
                                engine.ofClass().content().name(),
                                engine.turn().position().name(),
                                tenderFirst,
                                engine.engine().content().remarks()))
                        .toList(),
                content.crew().stream()
                        .map(slot -> new Heading.CrewLine(
                                slot.staffNumber(),
                                inputs.people().getOrDefault(slot.staffNumber(), slot.staffNumber()),
                                slot.role(),
                                slot.engineNumber()))
                        .toList(),
                inputs.consist() == null
                        ? null
                        : inputs.consist().formation().content().name(),
                content.rail(),
                content.weather(),
                content.dark());
    }

    List<Phrase> madeFrom() {
        List<Phrase> from = new ArrayList<>();
        from.add(Phrase.of(
                "made-from.train",
                Term.text(inputs.content().code()),
                Term.number(inputs.train().revision(), "")));
        for (EngineAtTrain engine : inputs.engines()) {
            from.add(Phrase.of(
                    "made-from.class",
                    Term.text(engine.ofClass().content().name()),
                    Term.number(engine.ofClass().number(), "")));
            from.add(Phrase.of(
                    "made-from.engine",
                    Term.text(engine.turn().engineNumber()),
                    Term.number(engine.engine().number(), "")));
        }
        Consist consist = inputs.consist();
        if (consist != null) {
            from.add(Phrase.of(
                    "made-from.formation",
                    Term.text(consist.formation().content().name()),
                    Term.number(consist.formation().number(), "")));
        }
        inputs.content().legs().stream()
                .map(TrainDraft.Leg::routeCode)
                .distinct()
                .forEach(code -> from.add(Phrase.of("made-from.route", Term.text(code))));
        for (Restriction restriction : inputs.restrictions()) {
            from.add(Phrase.of(
                    "made-from.restriction", Term.text(restriction.draft().number())));
        }
        return from;
    }

    List<NoteRow> notes() {
        List<NoteRow> notes = new ArrayList<>();
        Map<String, LocomotiveClassDraft> classes = new LinkedHashMap<>();
        inputs.engines()
                .forEach(engine -> classes.put(
                        engine.ofClass().content().code(), engine.ofClass().content()));
        for (LocomotiveClassDraft ofClass : classes.values()) {
            ofClass.notes().forEach(note -> notes.add(new NoteRow(ofClass.name(), note.topic(), note.text(), null)));
        }
        shortMoves(notes);
        return notes;
    }

    /** How the train engine moves a short way, light and on the level: coupling up, turning. */
    private void shortMoves(List<NoteRow> notes) {
        EngineAtTrain first = inputs.engines().get(0);
        if (first.figures() == null) {
            return;
        }
        ShortMoves moves = ShortMoves.of(first.figures());
        Term shut = yards(burst(moves, false).movedM());
        Term open = yards(burst(moves, true).movedM());
        Term ranOn = yards(burst(moves, false).ranOnM());
        Term seconds = Term.number(BURST_S, "");
        Phrase told = moves.stopM().isPresent()
                ? Phrase.of(
                        "note.short-moves",
                        seconds,
                        shut,
                        ranOn,
                        open,
                        Term.number(ShortMoves.WALKING_MPH, "mph"),
                        yards(moves.stopM().getAsDouble()))
                : Phrase.of("note.short-moves-no-brake", seconds, shut, ranOn, open);
        String className = first.ofClass().content().name();
        int at = notes.size();
        for (int i = 0; i < notes.size(); i++) {
            NoteRow note = notes.get(i);
            if (note.className().equals(className) && note.topic() == NoteTopic.SHORT_MOVEMENTS) {
                at = i + 1;
            }
        }
        notes.add(at, new NoteRow(className, NoteTopic.SHORT_MOVEMENTS, "", told));
    }

    private static Move burst(ShortMoves moves, boolean cocksOpen) {
        return moves.bursts().stream()
                .filter(row -> row.openS() == BURST_S && row.cocksOpen() == cocksOpen)
                .findFirst()
                .orElseThrow()
                .move();
    }

    private static Term yards(double metres) {
        return Term.number(metres / Units.metresFromYards(1), "yd");
    }

    List<SourceRow> sources() {
        List<SourceRow> rows = new ArrayList<>();
        for (EngineAtTrain engine : inputs.engines()) {
            String code = engine.ofClass().content().code();
            entries(
                    rows,
                    "class:" + code,
                    engine.ofClass().content().name(),
                    "class revision " + engine.ofClass().number(),
                    engine.ofClass().entries());
            entries(
                    rows,
                    "engine:" + engine.turn().engineNumber(),
                    engine.turn().engineNumber(),
                    "engine revision " + engine.engine().number(),
                    engine.engine().entries());
        }
        Consist consist = inputs.consist();
        if (consist != null) {
            for (VehicleKindRevision kind : consist.kinds().values()) {
                entries(
                        rows,
                        "vehicle:" + kind.content().code(),
                        kind.content().name(),
                        "vehicle revision " + kind.number(),
                        kind.entries());
            }
        }
        for (PolicyFigure figure : inputs.policy().values()) {
            rows.add(new SourceRow(
                    "policy:" + figure.key(),
                    figure.key(),
                    figure.value() + " " + figure.unit(),
                    figure.origin(),
                    figure.source(),
                    "policy version " + figure.version(),
                    figure.owner(),
                    figure.validFrom().atStartOfDay(ZoneId.of(inputs.zone())).toInstant()));
        }
        return distinct(rows);
    }

    private static List<SourceRow> distinct(List<SourceRow> rows) {
        Map<String, SourceRow> byKey = new LinkedHashMap<>();
        rows.forEach(row -> byKey.putIfAbsent(row.key(), row));
        return List.copyOf(byKey.values());
    }

    private static void entries(
            List<SourceRow> rows, String prefix, String subject, String revision, List<FigureEntry> entries) {
        for (FigureEntry entry : entries) {
            SourcedFigure figure = entry.figure();
            String value = figure.value() == null ? "" : number(figure.value()) + " " + figure.unit();
            Instant at = entry.enteredAt();
            rows.add(new SourceRow(
                    prefix + ":" + figure.key(),
                    subject + ", " + figure.key().replace('_', ' '),
                    value,
                    figure.origin(),
                    figure.note(),
                    revision,
                    entry.enteredBy(),
                    at));
        }
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf(Math.round(value)) : String.valueOf(value);
    }

    Inputs inputs() {
        Map<String, Double> policy = new LinkedHashMap<>();
        inputs.policy().forEach((key, figure) -> policy.put(key, figure.value()));
        return new Inputs(
                inputs.content(),
                inputs.revisions(),
                inputs.restrictions().stream().map(Restriction::draft).toList(),
                policy);
    }
}
