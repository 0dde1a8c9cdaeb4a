package org.crosshead.briefing.build;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.Policy.PolicyFigure;
import org.crosshead.briefing.build.TrainInputs.Consist;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.briefing.document.Heading;
import org.crosshead.briefing.document.Inputs;
import org.crosshead.briefing.document.NoteRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.SourceRow;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.BrakeReading;
import org.crosshead.kernel.traction.ShortMove.Move;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathEstimate;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.Restriction;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EstimateUsed;
import org.crosshead.stock.FigureEntry;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.ShortMoves;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Makes what is taken over from the records: heading, notes, assumptions, sources, inputs. */
final class PapersMaker {

    private static final double HOUR_S = 3_600;
    private static final double PER_CENT = 100;
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

    /**
     * Returns what the briefing rests on.
     *
     * @param workings null where nothing could be computed
     */
    List<Phrase> assumptions(@Nullable Workings workings) {
        List<Phrase> assumptions = new ArrayList<>();
        assumptions.add(Phrase.of(
                "assumption.rail", Term.text("rail." + inputs.content().rail().name())));
        assumptions.add(Phrase.of("assumption.resistance"));
        assumptions.add(Phrase.of("assumption.adhesion"));
        assumptions.add(Phrase.of("assumption.slip"));
        assumptions.add(Phrase.of("assumption.engine"));
        heating(assumptions);
        crown(assumptions);
        assumptions.add(Phrase.of("assumption.brake"));
        reading(assumptions);
        if (workings != null) {
            brakedWeight(workings.model(), assumptions);
            assumptions.addAll(new AxleRule(workings.model(), inputs.path().gradients()).told());
        }
        assumptions.add(Phrase.of("assumption.crew"));
        for (EngineAtTrain engine : inputs.engines()) {
            if (engine.figures() != null) {
                engine.figures().estimates().forEach(used -> assumptions.add(estimate(used)));
            }
        }
        Consist consist = inputs.consist();
        if (consist != null && consist.figures() != null) {
            consist.figures().estimates().forEach(used -> assumptions.add(estimate(used)));
        }
        if (!inputs.path().reversalsM().isEmpty()) {
            assumptions.add(Phrase.of("assumption.reversal"));
        }
        inputs.path().estimates().stream()
                .filter(PathEstimate::accepted)
                .map(estimate -> estimate("assumption", estimate, inputs.path()))
                .forEach(assumptions::add);
        troughs(assumptions);
        return assumptions;
    }

    /** Says by which rules the emergency distances were worked out. */
    private static void brakedWeight(TrainModel model, List<Phrase> assumptions) {
        OptionalDouble percent = model.brakedPercent();
        if (percent.isPresent()) {
            String kind = percent.getAsDouble() < BrakedWeight.PERCENT_LEAST
                    ? "assumption.braked-weight-low"
                    : "assumption.braked-weight";
            assumptions.add(Phrase.of(kind, Term.number(percent.getAsDouble(), "%")));
        } else if (BrakedWeight.applies(model.brake())) {
            assumptions.add(Phrase.of("assumption.braked-weight-unknown"));
        }
    }

    /** Says what the train's heating takes. */
    private void heating(List<Phrase> assumptions) {
        double kgPerS = TrainModel.heatingKgPerS(inputs);
        if (kgPerS > 0) {
            assumptions.add(Phrase.of(
                    "assumption.heating",
                    Term.number(Units.lbFromKg(kgPerS) * HOUR_S, "lb/h"),
                    Term.number(inputs.policyValue(Policy.HEATING_STEAM), "lb/h")));
        }
    }

    /** Says what the gauge shows in a service application as it is counted. */
    private void reading(List<Phrase> assumptions) {
        double share = inputs.policyValue(Policy.SERVICE_SHARE);
        FormationFigures.Resolved load =
                inputs.consist() == null ? null : inputs.consist().figures();
        boolean onTrain = load != null && load.vehicles().stream().anyMatch(FormationFigures.Vehicle::braked);
        BrakeKind kind = !onTrain
                ? inputs.engines().get(0).ofClass().content().engineBrake()
                : inputs.engines().get(0).ofClass().content().trainBrake();
        if (kind == BrakeKind.VACUUM) {
            EngineFigures.Resolved engine = inputs.engines().get(0).figures();
            double madePa = engine == null
                    ? BrakeReading.twentyOneInchesPa()
                    : engine.brake().vacuumPa();
            assumptions.add(Phrase.of(
                    "assumption.reading-vacuum", inches(BrakeReading.vacuumPa(madePa, share)), inches(madePa)));
            if (load != null) {
                higherVacuum(load, madePa, assumptions);
            }
        } else if (kind == BrakeKind.AIR) {
            double psi = Units.psiFromPa(BrakeReading.airReductionPa(share));
            assumptions.add(Phrase.of("assumption.reading-air", Term.number(psi, "psi")));
        }
    }

    /** Vehicles made for more vacuum than the engine makes press less, and may still hold the vacuum of another engine. */
    private static void higherVacuum(FormationFigures.Resolved load, double madePa, List<Phrase> assumptions) {
        load.vehicles().stream()
                .filter(FormationFigures.Vehicle::braked)
                .mapToDouble(vehicle -> vehicle.vacuumPa().orElse(madePa))
                .max()
                .ifPresent(mostPa -> {
                    if (mostPa > madePa) {
                        assumptions.add(Phrase.of(
                                "assumption.vacuum-higher",
                                inches(mostPa),
                                inches(madePa),
                                Term.number(PER_CENT * BrakeReading.vacuumShare(mostPa, madePa, 0), "%")));
                    }
                });
    }

    private static Term inches(double pa) {
        return Term.number(pa / Units.paFromInHg(1), "in");
    }

    private void crown(List<Phrase> assumptions) {
        List<String> lacking = CrownMaker.lacking(inputs);
        if (lacking.isEmpty()) {
            assumptions.add(Phrase.of("assumption.crown"));
        }
        String number = inputs.engines().get(0).turn().engineNumber();
        lacking.forEach(
                key -> assumptions.add(Phrase.of("assumption.crown-unknown", Term.text(number), Term.text(key))));
    }

    /** Water from a trough is not in the forecast: what a scoop takes hangs on speed and on how long it is down. */
    private void troughs(List<Phrase> assumptions) {
        inputs.path().features().stream()
                .filter(feature -> feature.feature().kind() == FeatureKind.WATER_TROUGH)
                .map(feature -> Phrase.of(
                        "assumption.trough", Term.text(feature.feature().name())))
                .forEach(assumptions::add);
    }

    /**
     * Says what on the road nobody measured, and where.
     *
     * @param group of the phrase: {@code assumption} for what counts, {@code missing} for what waits to be accepted
     */
    static Phrase estimate(String group, PathEstimate estimate, PathGeometry path) {
        Double toM = estimate.toM();
        return Phrase.of(
                group + "." + estimate.kind().name().toLowerCase(Locale.ROOT) + "-estimated",
                Term.text(path.at(estimate.fromM()).measureText()),
                Term.text(toM == null ? "" : path.at(toM).measureText()),
                Term.text(estimate.name()),
                Term.text(estimate.routeCode()));
    }

    private static Phrase estimate(EstimateUsed used) {
        Double value = used.figure().value();
        return Phrase.of(
                "assumption.estimate",
                Term.text(used.subject()),
                Term.text(used.figure().key()),
                Term.number(value == null ? 0 : value, used.figure().unit()),
                Term.text(used.figure().note()));
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
