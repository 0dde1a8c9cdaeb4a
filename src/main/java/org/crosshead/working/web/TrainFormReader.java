package org.crosshead.working.web;

import static org.crosshead.working.web.TypedFields.orNull;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.TrainKind;
import org.crosshead.working.BookedTimes;
import org.crosshead.working.BookedTimes.Reading;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainRefusedException.Problem;
import org.crosshead.working.web.TrainForm.CallRow;
import org.crosshead.working.web.TrainForm.EngineRow;
import org.crosshead.working.web.TrainForm.LegRow;
import org.crosshead.working.web.TypedFields.Cell;
import org.jspecify.annotations.Nullable;

/** Reads what was typed into a train; finds a problem for every field that can't be read. */
final class TrainFormReader {

    private static final double LONGEST_LEG = 1e7;
    private static final int TIMES_A_CALL = 2;

    private final ZoneId zone;
    private final Map<String, MeasureUnit> units;
    private final TypedFields fields = new TypedFields();

    /** Takes the unit of each route's measure, by the route's code. */
    TrainFormReader(ZoneId zone, Map<String, MeasureUnit> units) {
        this.zone = zone;
        this.units = Map.copyOf(units);
    }

    /**
     * What could be read.
     *
     * @param form the form with its calls in running order; rows as they are numbered in the problems
     * @param draft complete only if there are no problems
     */
    record Read(TrainForm form, TrainDraft draft, List<Problem> problems) {}

    Read read(TrainForm typed, LocalDate otherwise) {
        List<Leg> legs = legs(typed);
        TrainForm form = typed.with(inRunningOrder(typed.calls(), legs));
        LocalDate day = fields.day(Cell.of("day", form.day()), otherwise);
        List<Call> calls = calls(form, legs, day);
        List<EngineTurn> engines = engines(form);
        TrainDraft draft = new TrainDraft(
                form.code(),
                form.title(),
                day,
                fields.choice(Cell.of("kind", form.kind()), TrainKind.class, TrainKind.PASSENGER),
                orNull(form.formationCode()),
                fields.choice(Cell.of("rail", form.rail()), RailState.class, RailState.DRY),
                form.weather(),
                isTicked(form.dark()),
                isTicked(form.heated()),
                legs,
                calls,
                engines,
                crew(form, new CrewTimes(zone, day, calls), engines));
        return new Read(form, draft, fields.problems());
    }

    static boolean isTicked(String box) {
        return box.equals("true");
    }

    private List<Leg> legs(TrainForm form) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < form.legs().size(); i++) {
            LegRow row = form.legs().get(i);
            chosen(new Cell("legs", i, "routeCode", row.routeCode()));
            MeasureUnit unit = unit(row.routeCode());
            double from = fields.measure(new Cell("legs", i, "fromMeasure", row.fromMeasure()), unit);
            double to = fields.measure(new Cell("legs", i, "toMeasure", row.toMeasure()), unit);
            Direction direction = to >= from ? Direction.RISING : Direction.FALLING;
            legs.add(new Leg(row.routeCode(), from, to, row.line(), direction, isTicked(row.tenderFirst())));
        }
        return legs;
    }

    private MeasureUnit unit(String routeCode) {
        return units.getOrDefault(routeCode, MeasureUnit.CHAINS);
    }

    private void chosen(Cell cell) {
        if (cell.typed().isEmpty()) {
            fields.refuse(cell, "choose");
        }
    }

    /** A call that was added at the end goes where it lies, if every place can be read. */
    private List<CallRow> inRunningOrder(List<CallRow> rows, List<Leg> legs) {
        List<Optional<Double>> places =
                rows.stream().map(row -> place(row, legs)).toList();
        if (places.stream().anyMatch(Optional::isEmpty)) {
            return rows;
        }
        return IntStream.range(0, rows.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> places.get(i).orElseThrow()))
                .map(rows::get)
                .toList();
    }

    private Optional<Double> place(CallRow row, List<Leg> legs) {
        String number = row.legNumber().isEmpty() ? "1" : row.legNumber();
        if (!number.matches("\\d{1,3}") || Integer.parseInt(number) < 1 || Integer.parseInt(number) > legs.size()) {
            return Optional.empty();
        }
        Leg leg = legs.get(Integer.parseInt(number) - 1);
        double sign = leg.direction() == Direction.RISING ? 1 : -1;
        return Measures.parse(row.atMeasure(), unit(leg.routeCode()))
                .map(at -> Integer.parseInt(number) * LONGEST_LEG + sign * (at - leg.fromMeasure()));
    }

    private List<Call> calls(TrainForm form, List<Leg> legs, LocalDate day) {
        List<@Nullable Reading> times = new ArrayList<>();
        for (int i = 0; i < form.calls().size(); i++) {
            CallRow row = form.calls().get(i);
            times.add(fields.time(new Cell("calls", i, "arrival", row.arrival())));
            times.add(fields.time(new Cell("calls", i, "departure", row.departure())));
        }
        BookedTimes.Resolved resolved = BookedTimes.resolve(day, zone, times);
        List<@Nullable Instant> moments = resolved.moments();
        if (moments.size() < times.size()) {
            refuseTime(form, moments.size(), resolved.skipped());
        }
        List<Call> calls = new ArrayList<>();
        for (int i = 0; i < form.calls().size(); i++) {
            calls.add(call(
                    i, form.calls().get(i), legs, at(moments, TIMES_A_CALL * i), at(moments, TIMES_A_CALL * i + 1)));
        }
        return calls;
    }

    private void refuseTime(TrainForm form, int place, boolean skipped) {
        int row = place / TIMES_A_CALL;
        String field = place % TIMES_A_CALL == 0 ? "arrival" : "departure";
        fields.refuse(
                new Cell("calls", row, field, ""),
                skipped ? "time-skipped" : "time-backwards",
                form.calls().get(row).place());
    }

    private static @Nullable Instant at(List<@Nullable Instant> moments, int index) {
        return index < moments.size() ? moments.get(index) : null;
    }

    private Call call(int index, CallRow row, List<Leg> legs, @Nullable Instant arrival, @Nullable Instant departure) {
        int leg = (int) fields.number(new Cell("calls", index, "legNumber", row.legNumber()), 1);
        String route = leg >= 1 && leg <= legs.size() ? legs.get(leg - 1).routeCode() : "";
        double at = fields.measure(new Cell("calls", index, "atMeasure", row.atMeasure()), unit(route));
        return new Call(leg, at, row.place(), isTicked(row.stops()), arrival, departure, isTicked(row.takesWater()));
    }

    private List<EngineTurn> engines(TrainForm form) {
        List<EngineTurn> engines = new ArrayList<>();
        for (int i = 0; i < form.engines().size(); i++) {
            EngineRow row = form.engines().get(i);
            chosen(new Cell("engines", i, "engineNumber", row.engineNumber()));
            engines.add(new EngineTurn(
                    row.engineNumber(),
                    fields.choice(
                            new Cell("engines", i, "position", row.position()),
                            EnginePosition.class,
                            EnginePosition.FRONT),
                    orNull(row.fromPlace()),
                    orNull(row.toPlace()),
                    fields.number(new Cell("engines", i, "pressurePsi", row.pressurePsi()), 0),
                    glassShare(new Cell("engines", i, "glassShare", row.glassShare())),
                    fields.numberOrNull(new Cell("engines", i, "waterGallons", row.waterGallons())),
                    fields.numberOrNull(new Cell("engines", i, "coalCwt", row.coalCwt()))));
        }
        return engines;
    }

    /** The form speaks of per cent, so what lies outside is refused in per cent. */
    private double glassShare(Cell cell) {
        double perCent = fields.number(cell, -1);
        if (cell.typed().isEmpty()) {
            fields.refuse(cell, "field-needed");
        } else if (perCent < 0 || perCent > 100) {
            fields.refuse(cell, "out-of-range", perCent, 0, 100);
        }
        return perCent / 100;
    }

    private List<CrewSlot> crew(TrainForm form, CrewTimes times, List<EngineTurn> engines) {
        List<CrewSlot> crew = new ArrayList<>();
        for (int i = 0; i < form.crew().size(); i++) {
            chosen(new Cell("crew", i, "staffNumber", form.crew().get(i).staffNumber()));
            crew.add(times.slot(form.crew().get(i), i, engines, fields));
        }
        return crew;
    }
}
