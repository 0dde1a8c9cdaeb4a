package org.crosshead.kernel.motion;

/**
 * When a train is at a call, in seconds of the run; of a place that is passed both are the time of passing.
 *
 * @param call index of the call in the request
 */
public record CallTime(int call, double arrivalS, double departureS) {

    /** Returns the arrival to the full second. */
    public long arrivalWholeS() {
        return Math.round(arrivalS);
    }

    /** Returns the departure to the full second. */
    public long departureWholeS() {
        return Math.round(departureS);
    }
}
