package org.crosshead.kernel.scatter;

import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.traction.LimitedBy;

/** What is kept of one day's run. */
final class DayRun {

    /** Values at the places, NaN beyond where the train came. */
    final double[] pressurePa;

    final double[] waterKg;
    final double[] coalKg;
    final boolean[] eased;
    /** By call; NaN where it was not reached. */
    final double[] arrivalS;

    final OptionalDouble standsM;
    final double leastPressurePa;
    final double leastWaterKg;

    DayRun(RunOutcome outcome, double[] placesM, int calls) {
        Run run = outcome.run();
        pressurePa = new double[placesM.length];
        waterKg = new double[placesM.length];
        coalKg = new double[placesM.length];
        eased = new boolean[placesM.length];
        arrivalS = new double[calls];
        standsM = outcome instanceof RunOutcome.Arrives ? OptionalDouble.empty() : OptionalDouble.of(run.endM());
        leastPressurePa = run.pressurePa(run.lowestPressure(0));
        leastWaterKg = run.waterKg(run.lowestWater(0));
        for (int i = 0; i < placesM.length; i++) {
            boolean reached = placesM[i] <= run.endM();
            int sample = reached ? run.sampleAt(placesM[i]) : -1;
            pressurePa[i] = reached ? run.pressurePa(sample) : Double.NaN;
            waterKg[i] = reached ? run.waterKg(sample) : Double.NaN;
            coalKg[i] = reached ? run.coalBurntKg(sample, 0) : Double.NaN;
        }
        for (int call = 0; call < calls; call++) {
            arrivalS[call] = arrival(run.callTimes(), call);
        }
        ease(run, placesM);
    }

    private static double arrival(List<CallTime> calls, int call) {
        return calls.stream()
                .filter(time -> time.call() == call)
                .mapToDouble(CallTime::arrivalS)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** Marks the places behind which the rail would not hold what was wished. */
    private void ease(Run run, double[] placesM) {
        int place = 0;
        for (int i = 0; i < run.size(); i++) {
            place = next(placesM, place, run.positionM(i));
            if (run.limitedBy(i).filter(LimitedBy.RAIL::equals).isPresent()) {
                eased[place] = true;
            }
        }
        for (Change change : run.changes()) {
            if (change instanceof Change.HandlesSet set && set.handles().cause() == Cause.RAIL_POOR) {
                eased[next(placesM, 0, run.positionM(Math.min(set.sample(), run.size() - 1)))] = true;
            }
        }
    }

    private static int next(double[] placesM, int from, double positionM) {
        int place = from;
        while (place + 1 < placesM.length && placesM[place + 1] <= positionM) {
            place++;
        }
        return place;
    }
}
