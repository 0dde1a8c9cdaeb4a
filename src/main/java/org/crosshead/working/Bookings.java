package org.crosshead.working;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainRefusedException.Problem;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Who and which engine is where: nobody and no engine works two trains at one time. A person is bound from booking on to booking
 * off, or from the train's departure to its arrival where that is not entered; an engine from where to where it works: from the
 * first departure there to the last arrival.
 */
@Repository
class Bookings {

    private static final String PEOPLE = """
            select t.id, t.code, t.running_day, s.staff_number as who,
                coalesce(s.book_on, (select min(c.departure) from train_call c where c.revision_id = t.current_revision)) as bound_from,
                coalesce(s.book_off, (select max(c.arrival) from train_call c where c.revision_id = t.current_revision)) as bound_to
            from train t join train_crew_slot s on s.revision_id = t.current_revision
            where not t.cancelled and t.running_day between ? and ? and s.staff_number = ?
            order by t.running_day, t.code
            """;
    private static final String ENGINES = """
            select t.id, t.code, t.running_day, e.engine_number as who,
                coalesce(
                    (select min(c.departure) from train_call c where c.revision_id = t.current_revision and c.place = e.from_place),
                    (select min(c.departure) from train_call c where c.revision_id = t.current_revision)) as bound_from,
                coalesce(
                    (select max(c.arrival) from train_call c where c.revision_id = t.current_revision and c.place = e.to_place),
                    (select max(c.arrival) from train_call c where c.revision_id = t.current_revision)) as bound_to
            from train t join train_engine e on e.revision_id = t.current_revision
            where not t.cancelled and t.running_day between ? and ? and e.engine_number = ?
            order by t.running_day, t.code
            """;

    private final JdbcClient jdbc;

    Bookings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A time for which somebody or an engine is bound to a train; the end is free again. */
    record Booking(long trainId, String trainCode, LocalDate day, String who, Instant from, Instant to) {

        boolean overlaps(Instant otherFrom, Instant otherTo) {
            return from.isBefore(otherTo) && otherFrom.isBefore(to);
        }
    }

    /** Lets one transaction at a time look at bookings and add to them, until it ends. */
    void lock() {
        jdbc.sql("select id from booking_gate where id = 1 for update")
                .query(Integer.class)
                .single();
    }

    /**
     * Returns what is booked twice, by the other trains of the day and of the days beside it.
     *
     * @param id of the train itself, or null for a new one
     */
    List<Problem> problemsOf(TrainDraft draft, @Nullable Long id) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < draft.crew().size(); i++) {
            CrewSlot slot = draft.crew().get(i);
            Instant from = slot.bookOn() == null ? departure(draft, null) : slot.bookOn();
            Instant to = slot.bookOff() == null ? arrival(draft, null) : slot.bookOff();
            check(
                    draft,
                    new Asked(PEOPLE, id, slot.staffNumber(), "crew", i, "staffNumber", "person-booked"),
                    from,
                    to,
                    problems);
        }
        for (int i = 0; i < draft.engines().size(); i++) {
            EngineTurn turn = draft.engines().get(i);
            Instant from = orElse(departure(draft, turn.fromPlace()), departure(draft, null));
            Instant to = orElse(arrival(draft, turn.toPlace()), arrival(draft, null));
            check(
                    draft,
                    new Asked(ENGINES, id, turn.engineNumber(), "engines", i, "engineNumber", "engine-booked"),
                    from,
                    to,
                    problems);
        }
        return problems;
    }

    /** Whose bookings are looked up, and where a clash is shown. */
    private record Asked(
            String sql, @Nullable Long own, String who, String list, int index, String field, String code) {}

    private void check(
            TrainDraft draft, Asked asked, @Nullable Instant from, @Nullable Instant to, List<Problem> problems) {
        if (from == null || to == null || !to.isAfter(from)) {
            return;
        }
        jdbc
                .sql(asked.sql())
                .params(draft.day().minusDays(1), draft.day().plusDays(1), asked.who())
                .query((rs, row) -> booking(rs))
                .list()
                .stream()
                .filter(booking -> asked.own() == null || asked.own() != booking.trainId())
                .filter(booking -> booking.overlaps(from, to))
                .findFirst()
                .ifPresent(booking -> problems.add(new Problem(
                        asked.list(),
                        asked.index(),
                        asked.field(),
                        asked.code(),
                        List.of(asked.who(), booking.trainCode(), booking.day(), booking.from(), booking.to()))));
    }

    /** Returns for what a person is bound on the trains of these days, in order of the days. */
    List<CrewBooking> of(String staffNumber, LocalDate firstDay, LocalDate lastDay) {
        return jdbc
                .sql(PEOPLE)
                .params(firstDay, lastDay, staffNumber)
                .query((rs, row) -> {
                    OffsetDateTime from = rs.getObject("bound_from", OffsetDateTime.class);
                    OffsetDateTime to = rs.getObject("bound_to", OffsetDateTime.class);
                    return from == null || to == null
                            ? Optional.<CrewBooking>empty()
                            : Optional.of(new CrewBooking(rs.getLong("id"), from.toInstant(), to.toInstant()));
                })
                .list()
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Booking booking(ResultSet rs) throws SQLException {
        return new Booking(
                rs.getLong("id"),
                rs.getString("code"),
                rs.getObject("running_day", LocalDate.class),
                rs.getString("who"),
                instant(rs, "bound_from"),
                instant(rs, "bound_to"));
    }

    private static Instant instant(ResultSet rs, String column) throws SQLException {
        return Objects.requireNonNull(rs.getObject(column, OffsetDateTime.class), column)
                .toInstant();
    }

    private static @Nullable Instant orElse(@Nullable Instant moment, @Nullable Instant other) {
        return moment == null ? other : moment;
    }

    private static @Nullable Instant departure(TrainDraft draft, @Nullable String place) {
        return draft.calls().stream()
                .filter(call -> call.departure() != null
                        && (place == null || call.place().equals(place)))
                .map(Call::departure)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Instant arrival(TrainDraft draft, @Nullable String place) {
        Instant found = null;
        for (Call call : draft.calls()) {
            if (call.arrival() != null && (place == null || call.place().equals(place))) {
                found = call.arrival();
            }
        }
        return found;
    }
}
