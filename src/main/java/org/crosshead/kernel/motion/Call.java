package org.crosshead.kernel.motion;

import java.util.OptionalDouble;
import org.crosshead.kernel.units.Check;

/**
 * One timed place of a run. Times are seconds after the booked departure of the first call.
 *
 * @param positionM where the head of the train stands or passes
 * @param stops false for a place that is passed
 * @param times booked times; of a place that is passed, the arrival is the time of passing
 * @param standing what is done while standing
 */
public record Call(double positionM, boolean stops, Times times, Standing standing) {

    public Call {
        Check.notNegative("positionM", positionM);
    }

    /** Returns a place that is passed, or stopped at, with no time booked and nothing done. */
    public static Call untimed(double positionM, boolean stops) {
        return new Call(positionM, stops, Times.NONE, Standing.NONE);
    }

    /** Booked times; empty where none is booked. */
    public record Times(OptionalDouble arrivalS, OptionalDouble departureS) {

        public static final Times NONE = new Times(OptionalDouble.empty(), OptionalDouble.empty());

        public Times {
            Check.that(
                    arrivalS.isEmpty() || departureS.isEmpty() || departureS.getAsDouble() >= arrivalS.getAsDouble(),
                    "departureS must not be before arrivalS");
        }
    }

    /**
     * What is done while standing.
     *
     * @param leastS least time that the train stands
     * @param takesWater true if every engine at work fills its tank
     */
    public record Standing(double leastS, boolean takesWater) {

        public static final Standing NONE = new Standing(0, false);

        public Standing {
            Check.within("leastS", leastS, 0, 86_400);
        }
    }
}
