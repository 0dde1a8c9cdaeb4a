package org.crosshead.working.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.web.TrainForm.CallRow;
import org.crosshead.working.web.TrainForm.CrewRow;
import org.crosshead.working.web.TrainForm.EngineRow;
import org.crosshead.working.web.TrainForm.LegRow;
import org.jspecify.annotations.Nullable;

/** Fills the form of a train from what is stored, so that it reads back unchanged. */
record TrainFormWriter(ZoneId zone, Map<String, MeasureUnit> units) {

    private static final DateTimeFormatter TO_THE_MINUTE = DateTimeFormatter.ofPattern("HH:mm");
    private static final DateTimeFormatter TO_THE_SECOND = DateTimeFormatter.ofPattern("HH:mm:ss");

    TrainForm form(Train train) {
        TrainDraft content = train.content();
        return new TrainForm(
                content.code(),
                content.title(),
                content.day().toString(),
                content.kind().name(),
                text(content.formationCode()),
                content.rail().name(),
                content.weather(),
                box(content.dark()),
                box(content.heated()),
                String.valueOf(train.version()),
                "",
                content.legs().stream().map(this::row).toList(),
                content.calls().stream().map(call -> row(call, content.legs())).toList(),
                content.engines().stream().map(TrainFormWriter::row).toList(),
                content.crew().stream().map(this::row).toList());
    }

    private LegRow row(Leg leg) {
        return new LegRow(
                leg.routeCode(),
                leg.line(),
                measure(leg.fromMeasure(), leg),
                measure(leg.toMeasure(), leg),
                box(leg.tenderFirst()));
    }

    private CallRow row(Call call, List<Leg> legs) {
        return new CallRow(
                call.place(),
                String.valueOf(call.legNumber()),
                measure(call.atMeasure(), legs.get(call.legNumber() - 1)),
                box(call.stops()),
                time(call.arrival()),
                time(call.departure()),
                box(call.takesWater()));
    }

    private String measure(double measure, Leg leg) {
        return Measures.exact(measure, units.getOrDefault(leg.routeCode(), MeasureUnit.CHAINS));
    }

    private static EngineRow row(EngineTurn engine) {
        return new EngineRow(
                engine.engineNumber(),
                engine.position().name(),
                text(engine.fromPlace()),
                text(engine.toPlace()),
                TrainWords.number(engine.pressurePsi()),
                TrainWords.number(100 * engine.glassShare()),
                TrainWords.number(engine.waterGallons()),
                TrainWords.number(engine.coalCwt()));
    }

    private CrewRow row(CrewSlot slot) {
        return new CrewRow(
                slot.staffNumber(),
                slot.role().name(),
                slot.engineNumber(),
                text(slot.fromPlace()),
                text(slot.toPlace()),
                time(slot.bookOn()),
                time(slot.bookOff()));
    }

    private String time(@Nullable Instant moment) {
        if (moment == null) {
            return "";
        }
        ZonedDateTime local = moment.atZone(zone);
        String reading = local.format(local.getSecond() == 0 ? TO_THE_MINUTE : TO_THE_SECOND);
        boolean again = !local.equals(local.withEarlierOffsetAtOverlap());
        return again ? reading + " again" : reading;
    }

    private static String box(boolean ticked) {
        return ticked ? "true" : "";
    }

    private static String text(@Nullable String value) {
        return value == null ? "" : value;
    }
}
