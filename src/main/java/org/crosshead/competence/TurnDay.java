package org.crosshead.competence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import java.util.stream.Stream;
import org.crosshead.working.TrainDraft;

/** The day of a turn that counts: that of its end. */
public final class TurnDay {

    private TurnDay() {}

    /** Returns the day on which the last of the crew books off, or the train arrives where that is not laid down. */
    public static LocalDate of(TrainDraft train, ZoneId zone) {
        Stream<Instant> ends = Stream.concat(
                train.crew().stream().map(TrainDraft.CrewSlot::bookOff).filter(Objects::nonNull),
                train.calls().stream().map(TrainDraft.Call::arrival).filter(Objects::nonNull));
        return ends.max(Instant::compareTo)
                .map(instant -> LocalDate.ofInstant(instant, zone))
                .orElse(train.day());
    }
}
