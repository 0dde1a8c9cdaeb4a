package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.jspecify.annotations.Nullable;

/** Trains of no railway that ever was, on the invented routes of the route tests. */
public final class WorkingFixtures {

    public static final LocalDate DAY = LocalDate.of(2030, 5, 6);

    /** Its clock goes forward on 31 March 2030 at 1:00 and back on 27 October 2030 at 2:00. */
    public static final ZoneId LONDON = ZoneId.of("Europe/London");

    private WorkingFixtures() {}

    /** From Anfang (0) to Mitte (480 chains) on MAIN. */
    public static TrainDraft train() {
        return train(List.of(leg("MAIN", 0, 480)), calls());
    }

    public static TrainDraft train(List<Leg> legs, List<Call> calls) {
        return new TrainDraft(
                "W1",
                "Anfang to Mitte",
                DAY,
                TrainKind.PASSENGER,
                "SET",
                RailState.WET,
                "Rain <script>alert(1)</script>",
                true,
                false,
                legs,
                calls,
                List.of(engine("612", null, null)),
                List.of(slot("T-1", Post.DRIVER, "09:15", "16:00"), slot("T-2", Post.FIREMAN, null, null)));
    }

    /** The same train under another code. */
    public static TrainDraft train(String code) {
        return coded(code, train());
    }

    /** The same train under another code on another day. */
    public static TrainDraft train(String code, LocalDate day) {
        return coded(code, new DayShift(ZoneId.of("UTC")).to(day, train()));
    }

    private static TrainDraft coded(String code, TrainDraft train) {
        return new TrainDraft(
                code,
                train.title(),
                train.day(),
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                train.calls(),
                train.engines(),
                train.crew());
    }

    public static TrainDraft with(TrainDraft train, List<EngineTurn> engines, List<CrewSlot> crew) {
        return new TrainDraft(
                train.code(),
                train.title(),
                train.day(),
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                train.calls(),
                engines,
                crew);
    }

    /** The same train so many minutes later. */
    public static TrainDraft later(TrainDraft train, int minutes) {
        List<Call> calls = train.calls().stream()
                .map(call -> new Call(
                        call.legNumber(),
                        call.atMeasure(),
                        call.place(),
                        call.stops(),
                        later(call.arrival(), minutes),
                        later(call.departure(), minutes),
                        call.takesWater()))
                .toList();
        return new TrainDraft(
                train.code(),
                train.title(),
                train.day(),
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                calls,
                train.engines(),
                train.crew());
    }

    private static @Nullable Instant later(@Nullable Instant moment, int minutes) {
        return moment == null ? null : moment.plusSeconds(60L * minutes);
    }

    public static List<Call> calls() {
        return List.of(call(0, "Anfang", null, "10:00"), call(480, "Mitte", "10:20", null));
    }

    public static Leg leg(String route, double from, double to) {
        Direction direction = to > from ? Direction.RISING : Direction.FALLING;
        return new Leg(route, from, to, direction == Direction.RISING ? "Down Main" : "Up Main", direction, false);
    }

    public static Call call(double at, String place, @Nullable String arrival, @Nullable String departure) {
        return new Call(1, at, place, true, utc(arrival), utc(departure), false);
    }

    public static EngineTurn engine(String number, @Nullable String from, @Nullable String to) {
        return new EngineTurn(number, EnginePosition.FRONT, from, to, 225, 0.75, null, 90.5);
    }

    public static CrewSlot slot(String staffNumber, Post role, @Nullable String on, @Nullable String off) {
        return new CrewSlot(staffNumber, role, "612", null, null, utc(on), utc(off));
    }

    /** A moment of the day, by a clock that shows UTC. */
    public static @Nullable Instant utc(@Nullable String time) {
        return time == null
                ? null
                : DAY.atTime(LocalTime.parse(time)).atZone(ZoneId.of("UTC")).toInstant();
    }
}
