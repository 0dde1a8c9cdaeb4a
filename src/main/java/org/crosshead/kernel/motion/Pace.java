package org.crosshead.kernel.motion;

import java.util.ArrayList;
import java.util.List;

/**
 * What a driver was told of a stretch between two calls.
 *
 * @param heldMps no steam is used to run faster; infinite where nothing was told
 * @param departureS when the stretch should begin
 * @param arrivalS when it should end
 */
public record Pace(double heldMps, double departureS, double arrivalS) {

    /** Never faster than so many times what was told: the limits of the road come first anyhow. */
    private static final double FASTER_MOST = 2;

    /** Returns what a run that keeps time tells, one for each stretch. */
    public static List<Pace> of(RunRequest request, Run run) {
        List<Pace> paces = new ArrayList<>();
        for (int call = 0; call + 1 < request.calls().size(); call++) {
            int from = call;
            double heldMps = run.changes().stream()
                    .filter(Change.PaceKept.class::isInstance)
                    .map(Change.PaceKept.class::cast)
                    .filter(kept -> isFrom(request, from, run.positionM(kept.sample())))
                    .mapToDouble(Change.PaceKept::speedMps)
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
            paces.add(new Pace(
                    heldMps, time(run, from).departureS(), time(run, from + 1).arrivalS()));
        }
        return paces;
    }

    private static boolean isFrom(RunRequest request, int call, double positionM) {
        return positionM >= request.calls().get(call).positionM()
                && positionM < request.calls().get(call + 1).positionM();
    }

    private static CallTime time(Run run, int call) {
        return run.callTimes().stream()
                .filter(time -> time.call() == call)
                .findFirst()
                .orElseThrow();
    }

    /** Returns the speed held by a driver who left at this time and means to arrive when he should. */
    double speedMps(double leftS) {
        double leftForItS = Math.max(1, arrivalS - Math.max(leftS, departureS));
        return heldMps * Math.min(FASTER_MOST, (arrivalS - departureS) / leftForItS);
    }
}
