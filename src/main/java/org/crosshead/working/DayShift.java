package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.jspecify.annotations.Nullable;

/**
 * Moves a train to another day and keeps the readings of the railway's clock.
 *
 * @param zone the railway's clock
 */
public record DayShift(ZoneId zone) {

    TrainDraft to(LocalDate day, TrainDraft train) {
        Period days =
                Period.ofDays(Math.toIntExact(day.toEpochDay() - train.day().toEpochDay()));
        return new TrainDraft(
                train.code(),
                train.title(),
                day,
                train.kind(),
                train.formationCode(),
                train.rail(),
                train.weather(),
                train.dark(),
                train.heated(),
                train.legs(),
                train.calls().stream().map(call -> call(call, days)).toList(),
                train.engines(),
                train.crew().stream().map(slot -> slot(slot, days)).toList());
    }

    private Call call(Call call, Period days) {
        return new Call(
                call.legNumber(),
                call.atMeasure(),
                call.place(),
                call.stops(),
                moved(call.arrival(), days),
                moved(call.departure(), days),
                call.takesWater());
    }

    private CrewSlot slot(CrewSlot slot, Period days) {
        return new CrewSlot(
                slot.staffNumber(),
                slot.role(),
                slot.engineNumber(),
                slot.fromPlace(),
                slot.toPlace(),
                moved(slot.bookOn(), days),
                moved(slot.bookOff(), days));
    }

    private @Nullable Instant moved(@Nullable Instant moment, Period days) {
        return moment == null ? null : moment.atZone(zone).plus(days).toInstant();
    }
}
