package org.crosshead.briefing.build;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.SupplyRow;
import org.crosshead.briefing.document.Term;
import org.crosshead.briefing.document.TimeRow;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.units.Units;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Makes the rows of times, and of water and coal at each supply. */
final class TimesMaker {

    private static final double CWT_KG = Units.kgFromCwt(1);
    private static final double GALLON_KG = Units.kgFromGallons(1);

    private static final double MINUTE_S = 60;
    /** A section that lacks less is put down to the minutes of the timetable. */
    private static final double SHORT_S = 60;

    private final Workings workings;
    private final Run run;

    TimesMaker(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
    }

    List<TimeRow> times() {
        List<TimeRow> rows = new ArrayList<>();
        List<TrainDraft.Call> calls = workings.inputs().content().calls();
        for (int i = 0; i < calls.size(); i++) {
            rows.add(row(i, calls.get(i)));
        }
        return rows;
    }

    /** Says between which calls the booked time is too short for the train, where it is; the one that lacks most. */
    Optional<Phrase> shortTime() {
        List<TrainDraft.Call> calls = workings.inputs().content().calls();
        List<Call> timed = workings.model().request().calls();
        double worstS = SHORT_S;
        int worst = -1;
        int worstFrom = 0;
        int from = 0;
        double lateBeforeS = 0;
        for (CallTime time : run.callTimes()) {
            OptionalDouble booked = timed.get(time.call()).times().arrivalS();
            if (time.call() == 0 || booked.isEmpty()) {
                continue;
            }
            double lateS = time.arrivalS() - booked.getAsDouble();
            if (lateS - Math.max(0, lateBeforeS) > worstS) {
                worstS = lateS - Math.max(0, lateBeforeS);
                worst = time.call();
                worstFrom = from;
            }
            from = time.call();
            lateBeforeS = lateS;
        }
        if (worst < 0) {
            return Optional.empty();
        }
        return Optional.of(Phrase.of(
                "today.short-time",
                Term.text(calls.get(worstFrom).place()),
                Term.text(calls.get(worst).place()),
                workings.book().given("today.short-time", worstS / MINUTE_S, "min", "run:time")));
    }

    private Optional<CallTime> forecast(int call) {
        return run.callTimes().stream().filter(time -> time.call() == call).findFirst();
    }

    private TimeRow row(int index, TrainDraft.Call call) {
        Optional<CallTime> forecast = forecast(index);
        boolean last = index == workings.inputs().content().calls().size() - 1;
        Instant arrival = index == 0
                ? null
                : forecast.map(time -> at(time.arrivalWholeS())).orElse(null);
        Instant departure =
                last ? null : forecast.map(time -> at(time.departureWholeS())).orElse(null);
        Instant booked = call.arrival() != null ? call.arrival() : call.departure();
        return new TimeRow(
                workings.placeAt(workings.model().request().calls().get(index).positionM()),
                call.place(),
                workings.model().request().calls().get(index).stops(),
                call.arrival(),
                arrival,
                call.departure(),
                departure,
                late(index, booked, arrival));
    }

    private Instant at(long seconds) {
        return workings.model().startsAt().plusSeconds(seconds);
    }

    private @Nullable Term late(int index, @Nullable Instant booked, @Nullable Instant forecast) {
        if (booked == null || forecast == null || index == 0) {
            return null;
        }
        double forecastS =
                Duration.between(workings.model().startsAt(), forecast).toSeconds();
        double bookedS = Duration.between(workings.model().startsAt(), booked).toSeconds();
        Step step = new Step(
                StepKind.FORMULA,
                "time.late",
                "forecast - booked",
                List.of(
                        new Input("forecast", forecastS, "s", "run:time"),
                        new Input("booked", bookedS, "s", "train:booked")),
                forecastS - bookedS,
                "s",
                "ARITHMETIC");
        return workings.book().put("t" + (index + 1) + ".late", Figure.of(List.of(step)));
    }

    List<SupplyRow> supplies() {
        List<SupplyRow> rows = new ArrayList<>();
        List<TrainDraft.Call> calls = workings.inputs().content().calls();
        for (int engine = 0; engine < workings.inputs().engines().size(); engine++) {
            double usedBeforeKg = 0;
            double burntBeforeKg = 0;
            for (int i = 0; i < calls.size(); i++) {
                boolean shown = i == 0 || i == calls.size() - 1 || calls.get(i).takesWater();
                Optional<CallTime> time = forecast(i);
                double atM = workings.model().request().calls().get(i).positionM();
                if (!shown || time.isEmpty() || !isThere(engine, atM)) {
                    continue;
                }
                int before = run.sampleAtTime(time.get().arrivalS());
                int after = run.sampleAtTime(time.get().departureS());
                double usedKg = run.tankUsedKg(before, engine);
                double burntKg = run.coalBurntKg(before, engine);
                rows.add(supply(
                        new Spot(i, engine, before, after),
                        calls.get(i),
                        usedKg - usedBeforeKg,
                        burntKg - burntBeforeKg));
                usedBeforeKg = usedKg;
                burntBeforeKg = burntKg;
            }
        }
        return rows;
    }

    /** Returns true where an engine works, its last place included. */
    private boolean isThere(int engine, double atM) {
        EngineAtWork atWork = workings.model().request().train().engines().get(engine);
        return atWork.worksAt(atM) || atM == atWork.assistance().toM();
    }

    /** A call at which supplies are told, for one engine. */
    private record Spot(int call, int engine, int before, int after) {}

    private SupplyRow supply(Spot spot, TrainDraft.Call call, double usedKg, double burntKg) {
        String key = "s" + (spot.engine() + 1) + "." + (spot.call() + 1) + ".";
        double coalFullKg = workings.model()
                .request()
                .train()
                .engines()
                .get(spot.engine())
                .supply()
                .coalKg();
        double waterKg = run.tankWaterKg(spot.before(), spot.engine());
        double atM = workings.model().request().calls().get(spot.call()).positionM();
        double tankFullKg = workings.model()
                .request()
                .train()
                .engines()
                .get(spot.engine())
                .supply()
                .tankFullKg();
        double fedStandingKg =
                run.tankUsedKg(spot.after(), spot.engine()) - run.tankUsedKg(spot.before(), spot.engine());
        Term taken = call.takesWater()
                ? workings.book()
                        .difference(
                                key + "taken",
                                "supply.taken",
                                new FigureBook.Masses(tankFullKg + fedStandingKg, waterKg),
                                GALLON_KG,
                                "gal")
                : null;
        double coalLeftKg = coalFullKg - run.coalBurntKg(spot.before(), spot.engine());
        return new SupplyRow(
                workings.placeAt(atM),
                call.place(),
                workings.inputs().engines().get(spot.engine()).turn().engineNumber(),
                workings.book()
                        .difference(
                                key + "water-used", "supply.used", new FigureBook.Masses(usedKg, 0), GALLON_KG, "gal"),
                workings.book()
                        .difference(
                                key + "water-left", "supply.left", new FigureBook.Masses(waterKg, 0), GALLON_KG, "gal"),
                taken,
                workings.book()
                        .difference(key + "coal-used", "supply.used", new FigureBook.Masses(burntKg, 0), CWT_KG, "cwt"),
                workings.book()
                        .difference(
                                key + "coal-left", "supply.left", new FigureBook.Masses(coalLeftKg, 0), CWT_KG, "cwt"));
    }
}
