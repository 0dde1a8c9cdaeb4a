package org.crosshead.briefing.build;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.Progress;
import org.crosshead.briefing.Progress.Part;
import org.crosshead.briefing.WhatIf;
import org.crosshead.briefing.WhatIfAnswer;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.briefing.document.HandRow;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Standing;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.platform.CurrentActor;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.stock.EngineMaker;
import org.crosshead.stock.WorkingPressures;
import org.crosshead.working.Train;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Builds the document of a train's briefing from what is stored now. With a figure missing it shows the road and says what is missing. */
@Component
public class BriefingBuilder {

    private static final double PER_CENT = 100;

    private final InputsReader reader;
    private final Routes routes;
    private final CurrentActor actor;
    private final Clock clock;
    private final EngineMaker maker;
    private final WorkingPressures pressures;

    BriefingBuilder(
            InputsReader reader,
            Routes routes,
            EngineMaker maker,
            WorkingPressures pressures,
            CurrentActor actor,
            Clock clock) {
        this.pressures = pressures;
        this.reader = reader;
        this.maker = maker;
        this.routes = routes;
        this.actor = actor;
        this.clock = clock;
    }

    /** Returns the ids of the revisions, and the restrictions, from which the train's briefing would be made now. */
    public Map<String, String> fingerprint(Train train) {
        TrainInputs inputs = reader.read(train);
        Map<String, String> fingerprint = new LinkedHashMap<>();
        inputs.revisions().forEach((key, id) -> fingerprint.put(key, String.valueOf(id)));
        inputs.restrictions()
                .forEach(restriction -> fingerprint.put(
                        "restriction:" + restriction.draft().number(),
                        restriction.draft().toString()));
        inputs.policy().forEach((key, figure) -> {
            if (Policy.tells(key)) {
                fingerprint.put("policy:" + key, String.valueOf(figure.value()));
            }
        });
        return fingerprint;
    }

    /** Returns the briefing. */
    public BriefingDocument build(Train train, Progress progress) {
        TrainInputs inputs = reader.read(train);
        PapersMaker papers = new PapersMaker(inputs);
        Map<String, MeasureUnit> units = units();
        RoadMaker roads = new RoadMaker(inputs, units);
        if (!inputs.missing().isEmpty()) {
            return document(inputs, papers, roads.make(null, null), null, progress);
        }
        progress.begins(Part.PLANS);
        TrainModel model = new TrainModel(inputs, maker);
        Places places = places(inputs, units);
        RunRequest request = model.request().marked(places.marksM());
        HandWork work = HandWork.of(request, HandledRun.of(request), inputs);
        HandledRun run = work.run();
        Workings workings = new Workings(
                inputs,
                model,
                run.outcome(),
                run.plan(),
                run.needsMomentum(),
                work.worked(),
                places,
                new Speeds(places),
                new FigureBook(model.engines()));
        return document(inputs, papers, roads.make(model, run.outcome().run()), workings, progress);
    }

    /**
     * Returns what comes of a day that is not as planned, beside what a briefing of the train forecasts; nothing is stored.
     *
     * @throws BriefingRefusedException if figures are missing without which nothing can be computed, or what is asked cannot be
     */
    public WhatIfAnswer whatIf(Train train, BriefingDocument document, WhatIf asked) {
        TrainInputs inputs = reader.read(OtherDay.of(train, asked, pressures));
        if (!inputs.missing().isEmpty()) {
            throw new BriefingRefusedException("what-if-missing");
        }
        double heat = asked.engine().coalPercent() / PER_CENT;
        double grate = asked.engine().gratePercent() / PER_CENT;
        EngineMaker fired = heat == 1 && grate == 1
                ? maker
                : parameters -> maker.of(parameters.burning(heat).onGrate(grate));
        return new WhatIfRuns(inputs, new TrainModel(inputs, fired), places(inputs, units())).answer(document, asked);
    }

    /** Returns the places of a train's path at which a crew can be told something, in running order. */
    public List<Place> places(Train train) {
        Places places = places(reader.read(train), units());
        return places.marksM().stream().map(places::at).toList();
    }

    private static Places places(TrainInputs inputs, Map<String, MeasureUnit> units) {
        return new Places(inputs.path(), units, inputs.content().dark(), inputs.policyValue(Policy.LANDMARK_REACH));
    }

    private BriefingDocument document(
            TrainInputs inputs, PapersMaker papers, Road road, @Nullable Workings workings, Progress progress) {
        progress.begins(Part.DAYS);
        Sureness sureness =
                workings == null ? null : new SurenessMaker(workings).made().orElse(null);
        progress.begins(Part.WRITES);
        SummaryMaker summary = workings == null ? null : new SummaryMaker(workings, road, sureness);
        List<BrakingRow> braking = workings == null ? List.of() : new BrakingMaker(workings).rows();
        TimesMaker times = workings == null ? null : new TimesMaker(workings);
        Standing standing = workings == null ? null : new StandingMaker(workings).made();
        FiremanPlan fireman = workings == null ? null : new FiremanMaker(workings).made();
        List<HandRow> byHand = workings == null ? List.of() : new HandRowMaker(workings).rows();
        return new BriefingDocument(
                BriefingDocument.SCHEMA,
                papers.heading(),
                clock.instant(),
                actor.get().name(),
                papers.madeFrom(),
                inputs.missing(),
                summary == null ? List.of() : summary.today(),
                summary == null ? List.of() : summary.keyFigures(),
                road,
                workings == null ? List.of() : new HandlingMaker(workings, braking).rows(),
                braking,
                times == null ? List.of() : times.times(),
                times == null ? List.of() : times.supplies(),
                papers.notes(),
                new AssumptionMaker(inputs).made(workings),
                papers.sources(),
                workings == null ? Map.of() : workings.book().figures(),
                papers.inputs(),
                null,
                standing,
                workings == null ? null : new BrakingMaker(workings).atDanger(),
                sureness,
                byHand,
                fireman);
    }

    private Map<String, MeasureUnit> units() {
        Map<String, MeasureUnit> units = new LinkedHashMap<>();
        for (RouteSummary route : routes.all()) {
            units.put(route.code(), route.measureUnit());
        }
        return units;
    }
}
