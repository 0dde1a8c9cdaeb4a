package org.crosshead.briefing.build;

import java.util.List;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.plan.Plan;
import org.jspecify.annotations.Nullable;

/**
 * What all parts of a briefing are made from once everything is known.
 *
 * @param outcome what comes of the forecast
 * @param plan the plan that the run follows; null where none could be made and the run follows the rules of the trade
 * @param byHand what an inspector changed in the plan, and what came of it
 * @param needsMomentum true where the booked times are too slow to rush a bank, so that the forecast runs faster than booked
 */
record Workings(
        TrainInputs inputs,
        TrainModel model,
        RunOutcome outcome,
        @Nullable Plan plan,
        boolean needsMomentum,
        List<HandWork.Worked> byHand,
        Places places,
        Speeds speeds,
        FigureBook book) {

    Run run() {
        return outcome.run();
    }

    Term place(double positionM) {
        return Term.place(places.at(positionM));
    }

    Place placeAt(double positionM) {
        return places.at(positionM);
    }

    /** Returns the speed of the run at a sample, with its balance of forces. */
    Term speed(String key, int sample) {
        double atM = run().positionM(sample);
        double perUnit = 1 / speeds.value(1, atM);
        return book.fromRun(
                key,
                new FigureBook.Reading("run.speed", run().speedMps(sample), "m/s", perUnit, speeds.unit(atM)),
                run(),
                sample);
    }

    /** Returns a speed that was searched for, rounded down. */
    Term slowEnough(String key, double speedMps, double atM) {
        double value = speeds.value(speedMps, atM);
        String unit = speeds.unit(atM);
        Step found = new Step(
                StepKind.GIVEN,
                "braking.speed-found",
                "found",
                List.of(new Input("found", value, unit, "search:braking-speed")),
                value,
                unit,
                "SEARCH");
        Step down = new Step(
                StepKind.MARGIN,
                "braking.speed-down",
                "floor(speed)",
                List.of(new Input("speed", value, unit, "step:braking.speed-found")),
                Math.floor(value),
                unit,
                "SAFER");
        return book.put(key, Figure.of(List.of(found, down)));
    }

    /** Returns a speed that is laid down, in the unit of its road. */
    Term limit(String key, double speedMps, double atM) {
        return book.given(key, speeds.value(speedMps, atM), speeds.unit(atM), "route:limit");
    }
}
