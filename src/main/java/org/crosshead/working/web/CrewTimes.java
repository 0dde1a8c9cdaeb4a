package org.crosshead.working.web;

import static org.crosshead.working.web.TypedFields.orNull;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.crew.Post;
import org.crosshead.working.BookedTimes;
import org.crosshead.working.BookedTimes.Reading;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.web.TrainForm.CrewRow;
import org.crosshead.working.web.TypedFields.Cell;
import org.jspecify.annotations.Nullable;

/** Reads people's work on a train: they book on at the reading nearest to where their work begins, be it the evening before. */
record CrewTimes(ZoneId zone, LocalDate day, List<Call> calls) {

    CrewTimes {
        calls = List.copyOf(calls);
    }

    /** Reads a row; on a train with one engine the engine need not be named. */
    CrewSlot slot(CrewRow row, int index, List<EngineTurn> engines, TypedFields fields) {
        Cell on = new Cell("crew", index, "bookOn", row.bookOn());
        Cell off = new Cell("crew", index, "bookOff", row.bookOff());
        Instant bookOn = bookOn(fields.time(on), row.fromPlace(), on, fields);
        String engine = row.engineNumber().isEmpty() && engines.size() == 1
                ? engines.get(0).engineNumber()
                : row.engineNumber();
        return new CrewSlot(
                row.staffNumber(),
                fields.choice(new Cell("crew", index, "role", row.role()), Post.class, Post.DRIVER),
                engine,
                orNull(row.fromPlace()),
                orNull(row.toPlace()),
                bookOn,
                bookOff(bookOn, fields.time(off), off, fields));
    }

    private @Nullable Instant bookOn(@Nullable Reading time, String fromPlace, Cell cell, TypedFields fields) {
        if (time == null) {
            return null;
        }
        Optional<Instant> moment = BookedTimes.nearest(begins(fromPlace), time, zone);
        if (moment.isEmpty()) {
            fields.refuse(cell, "time-skipped");
        }
        return moment.orElse(null);
    }

    private @Nullable Instant bookOff(@Nullable Instant on, @Nullable Reading time, Cell cell, TypedFields fields) {
        if (time == null) {
            return null;
        }
        Instant begins = on == null ? begins("") : on;
        Reading first = reading(begins);
        BookedTimes.Resolved resolved =
                BookedTimes.resolve(begins.atZone(zone).toLocalDate(), zone, Arrays.asList(first, time));
        if (resolved.moments().size() < 2) {
            fields.refuse(cell, resolved.skipped() ? "time-skipped" : "book-off-before-on");
            return null;
        }
        return resolved.moments().get(1);
    }

    private Reading reading(Instant moment) {
        var local = moment.atZone(zone);
        return new Reading(
                local.toLocalTime(),
                local.getOffset().equals(local.withLaterOffsetAtOverlap().getOffset())
                        && !local.equals(local.withEarlierOffsetAtOverlap()));
    }

    /** Returns when work from this place begins; from an unknown one, when the train leaves. */
    private Instant begins(String fromPlace) {
        return calls.stream()
                .filter(call -> fromPlace.isEmpty() || call.place().equals(fromPlace))
                .map(call -> call.arrival() == null ? call.departure() : call.arrival())
                .filter(Objects::nonNull)
                .findFirst()
                .orElseGet(() -> day.atTime(12, 0).atZone(zone).toInstant());
    }
}
