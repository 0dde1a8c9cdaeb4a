package org.crosshead.briefing.build;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.crosshead.briefing.WhatIf;
import org.crosshead.briefing.WhatIfAnswer;
import org.crosshead.briefing.WhatIfAnswer.Arrival;
import org.crosshead.briefing.WhatIfAnswer.Lowest;
import org.crosshead.briefing.WhatIfAnswer.Setting;
import org.crosshead.briefing.WhatIfAnswer.Side;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.working.TrainDraft;

/** Plans a train once as it is booked and once for a day that is not as planned. */
final class WhatIfRuns {

    private static final double PER_CENT = 100;
    private static final double MINUTE_S = 60;
    private static final double APART_S = 1;

    private final TrainInputs inputs;
    private final TrainModel model;
    private final Places places;

    WhatIfRuns(TrainInputs inputs, TrainModel model, Places places) {
        this.inputs = inputs;
        this.model = model;
        this.places = places;
    }

    WhatIfAnswer answer(WhatIf asked) {
        RunRequest planned = model.request().marked(places.marksM());
        return new WhatIfAnswer(
                inputs.content().code(),
                inputs.zone(),
                side(planned, 0),
                side(changed(planned, asked), MINUTE_S * asked.lateMinutes()));
    }

    private static RunRequest changed(RunRequest request, WhatIf asked) {
        RunRoad road = request.road();
        RunRequest otherRail = new RunRequest(
                new RunRoad(road.track(), asked.rail(), road.poorRail(), road.reversalsM(), road.marksM()),
                withPressure(request.train(), asked.pressurePercent() / PER_CENT),
                later(request.calls(), MINUTE_S * asked.lateMinutes()),
                request.policy());
        return asked.loadPercent() == PER_CENT ? otherRail : otherRail.withTrailing(asked.loadPercent() / PER_CENT);
    }

    private static MakeUp withPressure(MakeUp train, double share) {
        List<EngineAtWork> engines = new ArrayList<>();
        for (EngineAtWork engine : train.engines()) {
            EngineState start = engine.start();
            EngineState lower = new EngineState(
                    share * start.pressurePa(), start.waterKg(), start.fireKg(), false, start.suppliesShare());
            engines.add(new EngineAtWork(engine.engine(), lower, engine.supply(), engine.assistance()));
        }
        return new MakeUp(train.body(), train.trailing(), engines, train.service()).releasing(train.ejector());
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

    private Side side(RunRequest request, double lateS) {
        HandledRun handled =
                HandWork.of(request, HandledRun.of(request), inputs).run();
        RunOutcome outcome = handled.outcome();
        Optional<Plan> plan = Optional.ofNullable(handled.plan());
        Run run = outcome.run();
        Boiler boiler = request.train().engines().get(0).engine().parameters().boiler();
        int pressure = run.lowestPressure(0);
        int water = run.lowestWater(0);
        double glass = PER_CENT
                * (run.waterKg(water) - boiler.waterLeastKg())
                / (boiler.waterFullKg() - boiler.waterLeastKg());
        return new Side(
                arrivals(run, lateS),
                Units.lbFromKg(run.coalTotalKg(0)),
                run.tankUsedKg(run.size() - 1, 0) / Units.kgFromGallons(1),
                new Lowest(Units.psiFromPa(run.pressurePa(pressure)), places.at(run.positionM(pressure))),
                new Lowest(glass, places.at(run.positionM(water))),
                plan.isPresent(),
                outcome instanceof RunOutcome.Arrives ? null : places.at(run.endM()),
                (int) run.changes().stream()
                        .filter(Change.HandlesSet.class::isInstance)
                        .count(),
                plan.map(this::settings).orElse(List.of()));
    }

    private List<Setting> settings(Plan plan) {
        return plan.settings().stream()
                .map(setting -> new Setting(
                        places.at(setting.fromM()),
                        setting.controls().regulator(),
                        PER_CENT * setting.controls().cutoff()))
                .toList();
    }

    private List<Arrival> arrivals(Run run, double lateS) {
        List<Arrival> arrivals = new ArrayList<>();
        List<TrainDraft.Call> calls = inputs.content().calls();
        for (int i = 1; i < calls.size(); i++) {
            int call = i;
            Instant forecast = run.callTimes().stream()
                    .filter(time -> time.call() == call)
                    .findFirst()
                    .map(CallTime::arrivalWholeS)
                    .map(seconds -> model.startsAt().plusSeconds(seconds + Math.round(lateS)))
                    .orElse(null);
            arrivals.add(new Arrival(calls.get(i).place(), calls.get(i).arrival(), forecast));
        }
        return arrivals;
    }
}
