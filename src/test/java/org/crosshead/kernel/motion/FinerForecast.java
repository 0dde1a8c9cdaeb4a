package org.crosshead.kernel.motion;

/** Opens the finer steps to tests of other packages. */
public final class FinerForecast {

    private FinerForecast() {}

    public static RunOutcome of(RunRequest request, Driver driver, Fireman fireman, double stepShare) {
        return Forecast.finer(request, driver, fireman, stepShare);
    }
}
