package org.crosshead.briefing.build;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.WhatIf;
import org.crosshead.briefing.WhatIfAnswer;
import org.crosshead.briefing.WhatIfAnswer.Arrival;
import org.crosshead.briefing.WhatIfAnswer.Lowest;
import org.crosshead.briefing.WhatIfAnswer.Setting;
import org.crosshead.briefing.WhatIfAnswer.Side;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Plans a train for a day that is not as planned, beside what its briefing forecasts. */
final class WhatIfRuns {

    private static final double PER_CENT = 100;
    private static final double MINUTE_S = 60;
    private static final double APART_S = 1;
    /** A stop so near to a call is made at it. */
    private static final double NEAR_CALL_M = 50;

    private final TrainInputs inputs;
    private final TrainModel model;
    private final Places places;

    /**
     * @param inputs of the train with the engines of that day
     * @param model of them
     */
    WhatIfRuns(TrainInputs inputs, TrainModel model, Places places) {
        this.inputs = inputs;
        this.model = model;
        this.places = places;
    }

    WhatIfAnswer answer(BriefingDocument document, WhatIf asked) {
        PlannedSide planned = new PlannedSide(document, places);
        RunRequest request = changed(model.request().marked(places.marksM()), asked);
        HandledRun handled =
                HandWork.of(request, HandledRun.of(request), inputs).run();
        return new WhatIfAnswer(
                inputs.content().code(),
                inputs.zone(),
                planned.side(),
                side(request, handled, MINUTE_S * asked.lateMinutes()),
                Optional.ofNullable(handled.plan())
                        .map(plan -> settings(plan, planned))
                        .orElse(List.of()),
                handled.plan() == null
                        ? new NoPlan(request, places, tons -> Term.number(tons, "tons")).sentences()
                        : List.of());
    }

    private static RunRequest changed(RunRequest request, WhatIf asked) {
        RunRoad road = request.road();
        RunRequest other = new RunRequest(
                new RunRoad(
                        slower(road.track(), asked.slow()),
                        road.rail(),
                        road.poorRail(),
                        road.reversalsM(),
                        road.marksM()),
                request.train(),
                stopping(request, later(request.calls(), MINUTE_S * asked.lateMinutes()), asked.stop()),
                request.policy());
        return asked.loadPercent() == PER_CENT ? other : other.withTrailing(asked.loadPercent() / PER_CENT);
    }

    private static Track slower(Track track, WhatIf.@Nullable Slow slow) {
        if (slow == null) {
            return track;
        }
        List<SpeedLimits.Length> lengths = new ArrayList<>(track.limits().lengths());
        lengths.add(new SpeedLimits.Length(slow.fromM(), slow.toM(), Units.mpsFromMph(slow.mph())));
        return new Track(
                track.gradients(),
                track.curves(),
                SpeedLimits.of(track.endM(), track.limits().greatestMps(), lengths));
    }

    /** Times count from the departure, so that a late start brings all that is booked nearer. */
    private static List<Call> later(List<Call> calls, double lateS) {
        List<Call> moved = new ArrayList<>();
        for (int i = 0; i < calls.size(); i++) {
            Call call = calls.get(i);
            Call.Times times = i == 0
                    ? call.times()
                    : new Call.Times(
                            nearer(call.times().arrivalS(), lateS),
                            nearer(call.times().departureS(), lateS));
            moved.add(new Call(call.positionM(), call.stops(), times, call.standing()));
        }
        return moved;
    }

    private static OptionalDouble nearer(OptionalDouble timeS, double lateS) {
        return timeS.isPresent()
                ? OptionalDouble.of(Math.max(APART_S, timeS.getAsDouble() - lateS))
                : OptionalDouble.empty();
    }

    /** Returns the calls with a stop that is not booked; one near a call is made there. */
    private static List<Call> stopping(RunRequest request, List<Call> calls, WhatIf.@Nullable Stop stop) {
        if (stop == null) {
            return calls;
        }
        boolean onTheWay = stop.pathM() > request.startM() + NEAR_CALL_M && stop.pathM() < request.endM() - NEAR_CALL_M;
        if (!onTheWay || isUnderATurnedTrain(request, stop.pathM())) {
            throw new BriefingRefusedException("what-if-stop-place");
        }
        List<Call> stopping = new ArrayList<>();
        boolean made = false;
        for (Call call : calls) {
            boolean near = Math.abs(call.positionM() - stop.pathM()) < NEAR_CALL_M;
            if (!made && !near && call.positionM() > stop.pathM()) {
                stopping.add(new Call(stop.pathM(), true, Call.Times.NONE, standing(stop, Call.Standing.NONE)));
                made = true;
            }
            stopping.add(near ? new Call(call.positionM(), true, call.times(), standing(stop, call.standing())) : call);
            made = made || near;
        }
        return stopping;
    }

    /** Says whether the train lies over a place once it has reversed: its head is beyond it from the start. */
    private static boolean isUnderATurnedTrain(RunRequest request, double atM) {
        double lengthM = request.train().body().lengthM();
        return request.road().reversalsM().stream()
                .anyMatch(reversalM -> atM > reversalM + NEAR_CALL_M && atM < reversalM + lengthM + NEAR_CALL_M);
    }

    private static Call.Standing standing(WhatIf.Stop stop, Call.Standing booked) {
        return new Call.Standing(Math.max(booked.leastS(), MINUTE_S * stop.minutes()), booked.takesWater());
    }

    private Side side(RunRequest request, HandledRun handled, double lateS) {
        RunOutcome outcome = handled.outcome();
        Run run = outcome.run();
        Boiler boiler = request.train().engines().get(0).engine().parameters().boiler();
        int pressure = run.lowestPressure(0);
        int water = run.lowestWater(0);
        double glass = PER_CENT * boiler.glassShare(run.waterKg(water));
        return new Side(
                arrivals(request, run, lateS),
                Units.lbFromKg(run.coalTotalKg(0)),
                run.tankUsedKg(run.size() - 1, 0) / Units.kgFromGallons(1),
                new Lowest(Units.psiFromPa(run.pressurePa(pressure)), places.at(run.positionM(pressure))),
                new Lowest(glass, places.at(run.positionM(water))),
                handled.plan() != null,
                outcome instanceof RunOutcome.Arrives ? null : places.at(run.endM()));
    }

    private List<Setting> settings(Plan plan, PlannedSide planned) {
        return plan.settings().stream()
                .map(setting -> new Setting(
                        places.at(setting.fromM()),
                        setting.controls().regulator(),
                        PER_CENT * setting.controls().cutoff(),
                        planned.has(
                                setting.fromM(),
                                setting.controls().regulator(),
                                setting.controls().cutoff())))
                .toList();
    }

    private List<Arrival> arrivals(RunRequest request, Run run, double lateS) {
        List<Arrival> arrivals = new ArrayList<>();
        List<TrainDraft.Call> calls = inputs.content().calls();
        for (int i = 1; i < calls.size(); i++) {
            double atM = model.request().calls().get(i).positionM();
            Instant forecast = run.callTimes().stream()
                    .filter(time -> request.calls().get(time.call()).positionM() == atM)
                    .findFirst()
                    .map(CallTime::arrivalWholeS)
                    .map(seconds -> model.startsAt().plusSeconds(seconds + Math.round(lateS)))
                    .orElse(null);
            arrivals.add(new Arrival(calls.get(i).place(), calls.get(i).arrival(), forecast));
        }
        return arrivals;
    }
}
