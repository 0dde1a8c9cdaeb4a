package org.crosshead.working.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.crosshead.route.Direction;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.RouteDraft;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainSummary;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Puts what is stored of trains into the words of their pages. */
@Component
class TrainPages {

    private final TrainChoices choices;
    private final Loads loads;
    private final TrainWords words;

    TrainPages(TrainChoices choices, Loads loads, TrainWords words) {
        this.choices = choices;
        this.loads = loads;
        this.words = words;
    }

    DayPage day(LocalDate day, List<TrainSummary> trains) {
        Map<String, String> names = choices.names();
        Map<String, String> loadOf = loads.all().stream().collect(Collectors.toMap(Loads.Load::code, Loads.Load::load));
        return new DayPage(
                day,
                words.day(day),
                trains.stream().map(train -> line(train, names, loadOf)).toList());
    }

    private DayPage.Line line(TrainSummary train, Map<String, String> names, Map<String, String> loadOf) {
        String formation = train.formationCode();
        return new DayPage.Line(
                train.id(),
                train.code(),
                train.title(),
                train.cancelled(),
                train.fromPlace(),
                words.time(train.departs(), train.day()),
                train.toPlace(),
                words.time(train.arrives(), train.day()),
                String.join(", ", train.engineNumbers()),
                formation == null ? "" : loadOf.getOrDefault(formation, formation),
                train.staffNumbers().stream()
                        .map(number -> names.getOrDefault(number, number))
                        .collect(Collectors.joining(", ")));
    }

    /** Returns the page of a train; its revisions come the latest first. */
    TrainPage train(Train train, List<Train> history) {
        TrainDraft content = train.content();
        Map<String, RouteDraft> routes = choices.routesByCode();
        Map<String, String> names = choices.names();
        return new TrainPage(
                train,
                words.day(content.day()),
                loads.of(content.formationCode()).orElse(null),
                content.legs().stream().map(leg -> leg(leg, routes)).toList(),
                content.calls().stream()
                        .map(call -> call(call, content, routes))
                        .toList(),
                content.engines().stream().map(TrainPages::engine).toList(),
                content.crew().stream()
                        .map(slot -> crew(slot, content.day(), names))
                        .toList(),
                history.stream().map(this::revision).toList());
    }

    private TrainPage.HistoryLine revision(Train train) {
        return new TrainPage.HistoryLine(
                train.revision(), words.moment(train.madeAt()), train.madeBy(), train.reason());
    }

    private static TrainPage.LegLine leg(Leg leg, Map<String, RouteDraft> routes) {
        RouteDraft route = routes.get(leg.routeCode());
        String direction = "";
        if (route != null) {
            direction = leg.direction() == Direction.RISING ? route.risingName() : route.fallingName();
        }
        return new TrainPage.LegLine(
                leg.routeCode(),
                route == null ? leg.routeCode() : route.name(),
                direction,
                leg.line(),
                measure(leg.fromMeasure(), route),
                measure(leg.toMeasure(), route),
                leg.tenderFirst());
    }

    private TrainPage.CallLine call(Call call, TrainDraft content, Map<String, RouteDraft> routes) {
        RouteDraft route = routes.get(content.legs().get(call.legNumber() - 1).routeCode());
        return new TrainPage.CallLine(
                call.place(),
                measure(call.atMeasure(), route),
                call.stops(),
                words.time(call.arrival(), content.day()),
                words.time(call.departure(), content.day()),
                call.takesWater());
    }

    private static String measure(double measure, @Nullable RouteDraft route) {
        return Measures.format(measure, route == null ? MeasureUnit.CHAINS : route.measureUnit());
    }

    private static TrainPage.EngineLine engine(EngineTurn engine) {
        return new TrainPage.EngineLine(
                engine.engineNumber(),
                engine.position().name(),
                text(engine.fromPlace()),
                text(engine.toPlace()),
                TrainWords.number(engine.pressurePsi()),
                TrainWords.number(100 * engine.glassShare()),
                TrainWords.number(engine.waterGallons()),
                TrainWords.number(engine.coalCwt()));
    }

    private TrainPage.CrewLine crew(CrewSlot slot, LocalDate day, Map<String, String> names) {
        return new TrainPage.CrewLine(
                names.getOrDefault(slot.staffNumber(), slot.staffNumber()),
                slot.staffNumber(),
                slot.role().name(),
                slot.engineNumber(),
                text(slot.fromPlace()),
                text(slot.toPlace()),
                words.time(slot.bookOn(), day),
                words.time(slot.bookOff(), day));
    }

    private static String text(@Nullable String value) {
        return value == null ? "" : value;
    }
}
