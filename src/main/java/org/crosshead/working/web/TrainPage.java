package org.crosshead.working.web;

import java.util.List;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/**
 * One train, ready to show. Times are empty where none is booked.
 *
 * @param day in words
 * @param load null for a light engine, or where the formation is no longer known
 * @param history the latest revision first
 */
record TrainPage(
        Train train,
        String day,
        Loads.@Nullable Load load,
        List<LegLine> legs,
        List<CallLine> calls,
        List<EngineLine> engines,
        List<CrewLine> crew,
        List<HistoryLine> history) {

    TrainPage {
        legs = List.copyOf(legs);
        calls = List.copyOf(calls);
        engines = List.copyOf(engines);
        crew = List.copyOf(crew);
        history = List.copyOf(history);
    }

    public TrainDraft content() {
        return train.content();
    }

    /** Returns the reason of the latest revision, which for a cancelled train says why. */
    public HistoryLine latest() {
        return history.get(0);
    }

    /** One leg of the path. */
    record LegLine(
            String routeCode,
            String routeName,
            String direction,
            String line,
            String from,
            String to,
            boolean tenderFirst) {}

    /** One call with its booked times. */
    record CallLine(String place, String at, boolean stops, String arrival, String departure, boolean takesWater) {}

    /** One engine; pressure, water and coal as the train starts, empty for full. */
    record EngineLine(
            String number,
            String position,
            String fromPlace,
            String toPlace,
            String pressurePsi,
            String glassPerCent,
            String waterGallons,
            String coalCwt) {}

    /** One person's work. */
    record CrewLine(
            String name,
            String staffNumber,
            String role,
            String engineNumber,
            String fromPlace,
            String toPlace,
            String bookOn,
            String bookOff) {}

    /** One revision. */
    record HistoryLine(int revision, String madeAt, String madeBy, String reason) {}
}
