package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainRefusedException.Problem;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Works out a first draft of a train from the little that a person must say: the path, the calls and times to be corrected. */
@Service
public class NewTrain {

    private static final double GLASS_AT_START = 0.75;

    private final Routes routes;

    NewTrain(Routes routes) {
        this.routes = routes;
    }

    /**
     * The little that must be said.
     *
     * @param departure when it leaves
     * @param pressurePsi boiler pressure at the start
     */
    public record Wish(
            String code,
            String fromPlace,
            String toPlace,
            LocalDate day,
            Instant departure,
            TrainKind kind,
            boolean everyStation,
            @Nullable String formationCode,
            String engineNumber,
            double pressurePsi,
            boolean tenderFirst,
            @Nullable String driver,
            @Nullable String fireman,
            RailState rail,
            String weather,
            boolean dark,
            boolean heated) {}

    /** Returns the names of all stations and timing points, in the order of the alphabet, each once. */
    public List<String> places() {
        return contents().stream()
                .flatMap(route -> route.features().stream())
                .filter(PathFinder::isTimed)
                .map(RouteDraft.Feature::name)
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Returns the first draft.
     *
     * @throws TrainRefusedException if a place is unknown or no way leads from one to the other
     */
    public TrainDraft draft(Wish wish) {
        List<RouteDraft> contents = contents();
        PathFinder finder = new PathFinder(contents, routes.junctions());
        PathFinder.Spot from = spot(finder, wish.fromPlace(), "fromPlace");
        PathFinder.Spot to = spot(finder, wish.toPlace(), "toPlace");
        List<Leg> legs = finder.find(from, to).orElse(List.of()).stream()
                .map(leg -> new Leg(
                        leg.routeCode(),
                        leg.fromMeasure(),
                        leg.toMeasure(),
                        leg.line(),
                        leg.direction(),
                        wish.tenderFirst()))
                .toList();
        if (legs.isEmpty()) {
            throw refused("toPlace", "no-path", wish.fromPlace(), wish.toPlace());
        }
        Map<String, RouteDraft> byCode = new HashMap<>();
        contents.forEach(route -> byCode.put(route.code(), route));
        List<Call> calls = new FirstDraft(byCode).calls(legs, wish.departure(), wish.kind(), wish.everyStation());
        return new TrainDraft(
                wish.code(),
                wish.fromPlace() + " to " + wish.toPlace(),
                wish.day(),
                wish.kind(),
                wish.formationCode(),
                wish.rail(),
                wish.weather(),
                wish.dark(),
                wish.heated(),
                legs,
                calls,
                List.of(new EngineTurn(
                        wish.engineNumber(),
                        EnginePosition.FRONT,
                        null,
                        null,
                        wish.pressurePsi(),
                        GLASS_AT_START,
                        null,
                        null)),
                crew(wish));
    }

    private static List<CrewSlot> crew(Wish wish) {
        List<CrewSlot> crew = new ArrayList<>();
        addSlot(crew, wish.driver(), Post.DRIVER, wish.engineNumber());
        addSlot(crew, wish.fireman(), Post.FIREMAN, wish.engineNumber());
        return crew;
    }

    private static void addSlot(List<CrewSlot> crew, @Nullable String staffNumber, Post role, String engineNumber) {
        if (staffNumber != null && !staffNumber.isBlank()) {
            crew.add(new CrewSlot(staffNumber, role, engineNumber, null, null, null, null));
        }
    }

    private static PathFinder.Spot spot(PathFinder finder, String place, String field) {
        return finder.spotOf(place).orElseThrow(() -> refused(field, "place-unknown", place));
    }

    private static TrainRefusedException refused(String field, String code, Object... args) {
        return new TrainRefusedException(List.of(new Problem("", -1, field, code, List.of(args))));
    }

    private List<RouteDraft> contents() {
        return routes.all().stream()
                .map(summary -> routes.current(summary.code()).map(RouteRevision::content))
                .flatMap(java.util.Optional::stream)
                .toList();
    }
}
