package org.crosshead.working.web;

import static org.crosshead.working.web.TypedFields.orNull;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.BookedTimes;
import org.crosshead.working.BookedTimes.Reading;
import org.crosshead.working.NewTrain;
import org.crosshead.working.TrainRefusedException.Problem;
import org.crosshead.working.web.TypedFields.Cell;
import org.jspecify.annotations.Nullable;

/** Reads the short form of a new train. */
record NewTrainReader(ZoneId zone, TrainChoices choices, TypedFields fields) {

    /** Returns what is wished, complete only if the fields hold no problem. */
    NewTrain.Wish wish(NewTrainForm form, LocalDate otherwise) {
        LocalDate day = fields.day(Cell.of("day", form.day()), otherwise);
        TrainKind kind = fields.choice(Cell.of("kind", form.kind()), TrainKind.class, TrainKind.PASSENGER);
        return new NewTrain.Wish(
                form.code(),
                form.fromPlace(),
                form.toPlace(),
                day,
                departure(Cell.of("departure", form.departure()), day),
                kind,
                TrainFormReader.isTicked(form.everyStation()),
                kind == TrainKind.LIGHT_ENGINE ? null : orNull(form.formationCode()),
                form.engineNumber(),
                pressurePsi(Cell.of("engineNumber", form.engineNumber())),
                TrainFormReader.isTicked(form.tenderFirst()),
                orNull(form.driver()),
                orNull(form.fireman()),
                fields.choice(Cell.of("rail", form.rail()), RailState.class, RailState.DRY),
                form.weather(),
                TrainFormReader.isTicked(form.dark()),
                TrainFormReader.isTicked(form.heated()));
    }

    private Instant departure(Cell cell, LocalDate day) {
        Reading time = fields.time(cell);
        Instant otherwise = day.atTime(LocalTime.NOON).atZone(zone).toInstant();
        if (time == null) {
            return otherwise;
        }
        List<@Nullable Instant> moments =
                BookedTimes.resolve(day, zone, Arrays.asList(time)).moments();
        Instant moment = moments.isEmpty() ? null : moments.get(0);
        if (moment == null) {
            fields.refuse(cell, "time-skipped");
        }
        return moment == null ? otherwise : moment;
    }

    private double pressurePsi(Cell cell) {
        OptionalDouble pressurePsi = choices.workingPressurePsi(cell.typed());
        if (pressurePsi.isEmpty()) {
            fields.refuse(cell, choices.isEngine(cell.typed()) ? "pressure-unknown" : "engine-unknown", cell.typed());
        }
        return pressurePsi.orElse(0);
    }

    /** Puts problems of the whole train beside the fields of the short form from which it was worked out. */
    static List<Problem> onShortForm(List<Problem> problems, NewTrain.Wish wish) {
        return problems.stream()
                .map(problem -> new Problem("", -1, field(problem, wish), problem.code(), problem.args()))
                .toList();
    }

    private static String field(Problem problem, NewTrain.Wish wish) {
        return switch (problem.list()) {
            case "engines" -> "engineNumber";
            case "crew" -> problem.index() == 0 && wish.driver() != null ? "driver" : "fireman";
            case "legs", "calls" -> "toPlace";
            default -> problem.field().equals("title") ? "toPlace" : problem.field();
        };
    }
}
