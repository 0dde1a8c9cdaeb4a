package org.crosshead.load;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be said to a question about loads. */
public sealed interface LoadAnswer {

    /**
     * Everything needed is known.
     *
     * @param sections in running order, from one station to the next
     * @param runs loads over the whole road without a stop, rising
     */
    record Known(List<Section> sections, List<Run> runs) implements LoadAnswer {

        public Known {
            sections = List.copyOf(sections);
            runs = List.copyOf(runs);
        }
    }

    /** Something needed is unknown or not accepted. */
    record Missing(List<Lack> lacks) implements LoadAnswer {

        public Missing {
            lacks = List.copyOf(lacks);
        }
    }

    /**
     * One thing that is missing.
     *
     * @param code of the words: {@code load.missing.<code>}
     * @param subject class, kind of vehicle or route
     * @param figure key of the figure, or empty
     */
    record Lack(String code, String subject, String figure) {}

    /**
     * One section.
     *
     * @param started greatest load that starts wherever it may be stopped
     * @param steady greatest load that is kept moving steadily at the least speed, by what the boiler keeps up for good
     * @param worked greatest load that is worked through from a stand at its beginning to a stand at its end, with the run it takes
     *     at the banks, without the boiler falling below the least pressure
     */
    record Section(String from, String to, Limit started, Limit steady, Limit worked) {}

    /**
     * A greatest load.
     *
     * @param vehicles how many; the most looked at if nothing stops more
     * @param tons their weight, long tons
     * @param stopped what stops one vehicle more, or null where the most looked at is not stopped
     */
    record Limit(int vehicles, double tons, @Nullable Stopped stopped) {}

    /**
     * What stops a load, and where.
     *
     * @param place in the route's measure
     */
    record Stopped(What what, String place) {}

    /** What stops a load. */
    enum What {
        CYLINDER,
        BOILER,
        RAIL,
        /** Comes to a stand. */
        STANDS,
        /** Pressure falls below what is asked. */
        PRESSURE,
        /** Cannot be held by the brake counted on. */
        BRAKE
    }

    /**
     * One load over the whole road without a stop.
     *
     * @param minutes from end to end, or null where it does not arrive
     * @param slowest lowest speed reached on a rising road after starting, or where it stands
     * @param lowest lowest pressure
     * @param stopped what stops it, or null
     */
    record Run(
            int vehicles,
            double tons,
            @Nullable Double minutes,
            Reading slowest,
            Reading lowest,
            @Nullable Stopped stopped) {}

    /** A figure at a place, mph or psi. */
    record Reading(double value, String place) {}
}
