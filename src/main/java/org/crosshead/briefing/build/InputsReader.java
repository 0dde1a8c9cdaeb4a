package org.crosshead.briefing.build;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.crosshead.briefing.HandPoint;
import org.crosshead.briefing.HandPointStore;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.build.TrainInputs.Consist;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathLeg;
import org.crosshead.route.Restriction;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.MissingFigure;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads everything a briefing is made from, at the revisions that hold now. */
@Component
class InputsReader {

    /** Restrictions that begin or end so close to the train count as well. */
    private static final Duration RESTRICTION_REACH = Duration.ofHours(2);

    static final double CALLS_APART_M = 2;

    private final Routes routes;
    private final Restrictions restrictions;
    private final LocomotiveClasses classes;
    private final Engines engines;
    private final VehicleKinds kinds;
    private final Formations formations;
    private final People people;
    private final Policy policy;
    private final HandPointStore handPoints;
    private final ZoneId zone;
    private final Clock clock;

    InputsReader(
            Routes routes,
            Restrictions restrictions,
            LocomotiveClasses classes,
            Engines engines,
            VehicleKinds kinds,
            Formations formations,
            People people,
            Policy policy,
            HandPointStore handPoints,
            ZoneId zone,
            Clock clock) {
        this.routes = routes;
        this.restrictions = restrictions;
        this.classes = classes;
        this.engines = engines;
        this.kinds = kinds;
        this.formations = formations;
        this.people = people;
        this.policy = policy;
        this.handPoints = handPoints;
        this.zone = zone;
        this.clock = clock;
    }

    TrainInputs read(Train train) {
        TrainDraft content = train.content();
        Map<String, Long> revisions = new LinkedHashMap<>();
        revisions.put("train:" + content.code(), train.revisionId());
        List<HandPoint> byHand = handPoints.of(train.id());
        byHand.forEach(point -> revisions.put("hand:" + point.id(), point.id()));
        List<Phrase> missing = new ArrayList<>();
        List<Restriction> inForce = restrictions(content);
        PathGeometry path = path(content, inForce, revisions);
        List<EngineAtTrain> atTrain = new ArrayList<>();
        for (EngineTurn turn : content.engines()) {
            atTrain.add(engine(turn, missing, revisions));
        }
        BrakeKind engineWorks = atTrain.get(0).ofClass().content().trainBrake();
        Consist consist = consist(content, engineWorks, missing, revisions);
        path.estimates().stream()
                .filter(estimate -> !estimate.accepted())
                .map(estimate -> AssumptionMaker.estimate("missing", estimate, path))
                .forEach(missing::add);
        reversalsAndCalls(content, path, missing);
        callsBeyondReversals(content, path, lengthM(atTrain, consist), missing);
        return new TrainInputs(
                train,
                path,
                inForce,
                atTrain,
                consist,
                names(content),
                policy.on(content.day()),
                missing,
                revisions,
                byHand,
                zone.getId());
    }

    private List<Restriction> restrictions(TrainDraft content) {
        Instant first = content.calls().stream()
                .map(call -> call.departure() == null ? call.arrival() : call.departure())
                .filter(Objects::nonNull)
                .min(Instant::compareTo)
                .orElseThrow();
        Instant last = content.calls().stream()
                .map(call -> call.arrival() == null ? call.departure() : call.arrival())
                .filter(Objects::nonNull)
                .max(Instant::compareTo)
                .orElseThrow();
        return content.legs().stream()
                .map(TrainDraft.Leg::routeCode)
                .distinct()
                .flatMap(code ->
                        restrictions
                                .inForce(code, first.minus(RESTRICTION_REACH), last.plus(RESTRICTION_REACH))
                                .stream())
                .filter(restriction -> !isWithdrawn(restriction))
                .toList();
    }

    private boolean isWithdrawn(Restriction restriction) {
        Instant withdrawnAt = restriction.withdrawnAt();
        return withdrawnAt != null && !withdrawnAt.isAfter(clock.instant());
    }

    private PathGeometry path(TrainDraft content, List<Restriction> inForce, Map<String, Long> revisions) {
        List<PathLeg> legs = new ArrayList<>();
        for (TrainDraft.Leg leg : content.legs()) {
            RouteRevision route = routes.current(leg.routeCode()).orElseThrow();
            revisions.put("route:" + leg.routeCode(), route.id());
            legs.add(new PathLeg(
                    route, leg.fromMeasure(), leg.toMeasure(), leg.line(), leg.direction(), leg.tenderFirst()));
        }
        return PathGeometry.of(legs, content.kind(), inForce);
    }

    private EngineAtTrain engine(EngineTurn turn, List<Phrase> missing, Map<String, Long> revisions) {
        EngineRevision engine = engines.current(turn.engineNumber()).orElseThrow();
        ClassRevision ofClass = classes.current(engine.content().classCode()).orElseThrow();
        revisions.put("engine:" + turn.engineNumber(), engine.id());
        revisions.put("class:" + ofClass.content().code(), ofClass.id());
        EngineFigures figures = StockModel.engine(ofClass, engine);
        if (figures instanceof EngineFigures.Missing lacking) {
            lacking.missing().forEach(figure -> missing.add(lack("class", figure)));
        }
        return new EngineAtTrain(
                turn, engine, ofClass, figures instanceof EngineFigures.Resolved resolved ? resolved : null);
    }

    /** Nothing is computed over a reversal at which the train does not stop, or with two calls at one place. */
    private static void reversalsAndCalls(TrainDraft content, PathGeometry path, List<Phrase> missing) {
        double beforeM = Double.NEGATIVE_INFINITY;
        List<Double> stops = new ArrayList<>();
        for (TrainDraft.Call call : content.calls()) {
            double atM = path.pathM(call.legNumber(), call.atMeasure());
            if (atM < beforeM + CALLS_APART_M) {
                missing.add(Phrase.of("missing.calls-apart", Term.text(call.place())));
            }
            beforeM = atM;
            if (call.stops()) {
                stops.add(atM);
            }
        }
        for (double reversalM : path.reversalsM()) {
            if (stops.stream().noneMatch(stop -> Math.abs(stop - reversalM) < CALLS_APART_M)) {
                missing.add(Phrase.of(
                        "missing.reversal-stop", Term.text(path.at(reversalM).measureText())));
            }
        }
    }

    /** Length of the train as far as it is known, engines that assist over a part of the path included. */
    private static double lengthM(List<EngineAtTrain> engines, @Nullable Consist consist) {
        double sum = consist == null || consist.figures() == null
                ? 0
                : consist.figures().lengthM();
        for (EngineAtTrain engine : engines) {
            if (engine.figures() != null) {
                sum += engine.figures().lengthM();
            }
        }
        return sum;
    }

    /** A call that the train covers where it reverses cannot be run to. */
    private static void callsBeyondReversals(
            TrainDraft content, PathGeometry path, double trainLengthM, List<Phrase> missing) {
        for (double reversalM : path.reversalsM()) {
            for (TrainDraft.Call call : content.calls()) {
                double beyondM = path.pathM(call.legNumber(), call.atMeasure()) - reversalM;
                if (beyondM > CALLS_APART_M && beyondM < trainLengthM + CALLS_APART_M) {
                    missing.add(Phrase.of("missing.reversal-covers", Term.text(call.place())));
                }
            }
        }
    }

    private @Nullable Consist consist(
            TrainDraft content, BrakeKind engineWorks, List<Phrase> missing, Map<String, Long> revisions) {
        String code = content.formationCode();
        if (code == null) {
            return null;
        }
        FormationRevision formation = formations.current(code).orElseThrow();
        revisions.put("formation:" + code, formation.id());
        Map<String, VehicleKindRevision> used = new HashMap<>();
        for (FormationDraft.Item item : formation.content().items()) {
            VehicleKindRevision kind = kinds.current(item.vehicleKindCode()).orElseThrow();
            used.put(item.vehicleKindCode(), kind);
            revisions.put("vehicle:" + item.vehicleKindCode(), kind.id());
        }
        FormationFigures figures = StockModel.formation(formation.content(), used, engineWorks);
        if (figures instanceof FormationFigures.Missing lacking) {
            lacking.missing().forEach(figure -> missing.add(lack("vehicle", figure)));
        }
        return new Consist(formation, used, figures instanceof FormationFigures.Resolved resolved ? resolved : null);
    }

    private static Phrase lack(String kind, MissingFigure figure) {
        SourcedFigure estimate = figure.estimate();
        String key = figure.spec().key();
        return estimate == null || estimate.value() == null
                ? Phrase.of("missing." + kind, Term.text(figure.subject()), Term.text(key))
                : Phrase.of(
                        "missing." + kind + "-estimate",
                        Term.text(figure.subject()),
                        Term.text(key),
                        Term.number(estimate.value(), estimate.unit()));
    }

    private Map<String, String> names(TrainDraft content) {
        Map<String, String> names = new HashMap<>();
        for (TrainDraft.CrewSlot slot : content.crew()) {
            people.byStaffNumber(slot.staffNumber())
                    .map(Person::name)
                    .ifPresent(name -> names.put(slot.staffNumber(), name));
        }
        return names;
    }
}
