package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A train as a line in a list.
 *
 * @param formationCode null for a light engine
 */
public record TrainSummary(
        long id,
        String code,
        LocalDate day,
        String title,
        boolean cancelled,
        String fromPlace,
        Instant departs,
        String toPlace,
        Instant arrives,
        @Nullable String formationCode,
        List<String> engineNumbers,
        List<String> staffNumbers) {

    /** Returns the line of a train. */
    public static TrainSummary of(Train train) {
        TrainDraft content = train.content();
        TrainDraft.Call first = content.calls().get(0);
        TrainDraft.Call last = content.calls().get(content.calls().size() - 1);
        return new TrainSummary(
                train.id(),
                content.code(),
                content.day(),
                content.title(),
                train.cancelled(),
                first.place(),
                Objects.requireNonNull(first.departure()),
                last.place(),
                Objects.requireNonNull(last.arrival()),
                content.formationCode(),
                content.engines().stream()
                        .map(TrainDraft.EngineTurn::engineNumber)
                        .toList(),
                content.crew().stream().map(TrainDraft.CrewSlot::staffNumber).toList());
    }

    public TrainSummary {
        engineNumbers = List.copyOf(engineNumbers);
        staffNumbers = List.copyOf(staffNumbers);
    }
}
