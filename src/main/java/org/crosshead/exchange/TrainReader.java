package org.crosshead.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.crew.Post;
import org.crosshead.exchange.Sheets.Owned;
import org.crosshead.exchange.Sheets.Owners;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Reads trains with their path, calls, engines and crew. */
final class TrainReader {

    private static final String TRAIN = "train_code";

    private final Sheets sheets;
    private final MeasureUnits units;
    private final Moments moments;
    private final ProblemList problems;

    TrainReader(Sheets sheets, MeasureUnits units, Moments moments, ProblemList problems) {
        this.sheets = sheets;
        this.units = units;
        this.moments = moments;
        this.problems = problems;
    }

    List<Located<TrainDraft>> trains() {
        Owned train = new Owned(ImportFile.TRAINS, "code", line -> key(line, "code"));
        Owners owners = Owners.of(sheets, train, problems);
        Map<String, List<Line>> legs = owned(ImportFile.LEGS, owners);
        Map<String, List<Line>> calls = owned(ImportFile.CALLS, owners);
        Map<String, List<Line>> engines = owned(ImportFile.ENGINE_TURNS, owners);
        Map<String, List<Line>> crew = owned(ImportFile.CREW_SLOTS, owners);
        return sheets.lines(ImportFile.TRAINS).stream()
                .map(line -> {
                    String key = key(line, "code");
                    return train(
                            line,
                            new Lists(
                                    legs.getOrDefault(key, List.of()),
                                    calls.getOrDefault(key, List.of()),
                                    engines.getOrDefault(key, List.of()),
                                    crew.getOrDefault(key, List.of())));
                })
                .toList();
    }

    /** The lines of one train. */
    private record Lists(List<Line> legs, List<Line> calls, List<Line> engines, List<Line> crew) {}

    private String key(Line line, String column) {
        return line.text(column) + "\n" + moments.day(line, "day");
    }

    private Map<String, List<Line>> owned(ImportFile file, Owners owners) {
        return sheets.lines(new Owned(file, TRAIN, line -> key(line, TRAIN)), owners, problems);
    }

    private Located<TrainDraft> train(Line line, Lists lists) {
        Parts parts = new Parts();
        LocalDate day = moments.day(line, "day");
        List<TrainDraft.Leg> legs = parts.list("legs", lists.legs(), this::leg);
        TrainDraft draft = new TrainDraft(
                line.text("code"),
                line.text("title"),
                day,
                line.word("kind", TrainKind.class),
                line.textOrNull("formation_code"),
                line.word("rail", RailState.class),
                line.text("weather"),
                line.yes("dark"),
                line.yes("heated"),
                legs,
                calls(parts, lists, day),
                parts.list("engines", lists.engines(), TrainReader::engine),
                parts.list("crew", lists.crew(), slot -> slot(slot, day)));
        return new Located<>(draft, line, parts.byPath());
    }

    private TrainDraft.Leg leg(Line line) {
        Optional<MeasureUnit> unit = units.of(line, "route_code");
        return new TrainDraft.Leg(
                line.text("route_code"),
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                line.text("line"),
                line.word("direction", Direction.class),
                line.yes("tender_first"));
    }

    private List<TrainDraft.Call> calls(Parts parts, Lists lists, LocalDate day) {
        List<TrainDraft.Call> calls = new ArrayList<>();
        parts.list("calls", lists.calls(), line -> {
            calls.add(call(line, lists.legs(), day, reached(calls)));
            return line;
        });
        return calls;
    }

    private TrainDraft.Call call(Line line, List<Line> legs, LocalDate day, @Nullable Instant reached) {
        int leg = line.whole("leg_number");
        Optional<MeasureUnit> unit = Optional.empty();
        if (leg >= 1 && leg <= legs.size()) {
            unit = units.of(legs.get(leg - 1), "route_code");
        } else {
            problems.refuse(line, "leg_number", "leg-unknown", leg, legs.size());
        }
        Instant arrival = moments.momentOrNull(line, "arrival", day, reached);
        return new TrainDraft.Call(
                leg,
                units.measure(line, "at_measure", unit),
                line.text("place"),
                line.yes("stops"),
                arrival,
                moments.momentOrNull(line, "departure", day, arrival == null ? reached : arrival),
                line.yes("takes_water"));
    }

    /** Returns the last moment that the calls so far name. */
    private static @Nullable Instant reached(List<TrainDraft.Call> calls) {
        Instant reached = null;
        for (TrainDraft.Call call : calls) {
            if (call.arrival() != null) {
                reached = call.arrival();
            }
            if (call.departure() != null) {
                reached = call.departure();
            }
        }
        return reached;
    }

    private static TrainDraft.EngineTurn engine(Line line) {
        return new TrainDraft.EngineTurn(
                line.text("engine_number"),
                line.word("position", TrainDraft.EnginePosition.class),
                line.textOrNull("from_place"),
                line.textOrNull("to_place"),
                line.number("pressure_psi"),
                line.number("glass_share"),
                line.numberOrNull("water_gallons"),
                line.numberOrNull("coal_cwt"));
    }

    private TrainDraft.CrewSlot slot(Line line, LocalDate day) {
        Instant bookOn = moments.momentOrNull(line, "book_on", day, null);
        return new TrainDraft.CrewSlot(
                line.text("staff_number"),
                line.word("role", Post.class),
                line.text("engine_number"),
                line.textOrNull("from_place"),
                line.textOrNull("to_place"),
                bookOn,
                moments.momentOrNull(line, "book_off", day, bookOn));
    }
}
