package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;
import org.crosshead.route.TrainKind;
import org.jspecify.annotations.Nullable;

/**
 * A train on a day as somebody enters it.
 *
 * @param code the train's reporting number or name, unique on its day
 * @param day the day on which it starts, by the railway's clock
 * @param formationCode null for a light engine
 * @param weather in words
 * @param heated whether the engine gives steam to heat the train
 * @param legs its path, in running order
 * @param calls timing points and stops, in running order; the first is its start, the last its end
 * @param engines the train engine first
 */
public record TrainDraft(
        String code,
        String title,
        LocalDate day,
        TrainKind kind,
        @Nullable String formationCode,
        RailState rail,
        String weather,
        boolean dark,
        boolean heated,
        List<Leg> legs,
        List<Call> calls,
        List<EngineTurn> engines,
        List<CrewSlot> crew) {

    public TrainDraft {
        legs = List.copyOf(legs);
        calls = List.copyOf(calls);
        engines = List.copyOf(engines);
        crew = List.copyOf(crew);
    }

    /**
     * A stretch of one route run in one direction. Where a leg begins with the opposite direction on the same route at the
     * same place, the train reverses there.
     *
     * @param tenderFirst whether the train engine runs tender or bunker first over it
     */
    public record Leg(
            String routeCode,
            double fromMeasure,
            double toMeasure,
            String line,
            Direction direction,
            boolean tenderFirst) {}

    /**
     * A place on the path with its booked times.
     *
     * @param legNumber which leg it lies on, from 1
     * @param place name of the station or timing point, as on the route
     * @param arrival null at the start or where the train does not stop
     * @param departure null at the end; where the train does not stop, the passing time
     * @param takesWater whether the tank is filled here
     */
    public record Call(
            int legNumber,
            double atMeasure,
            String place,
            boolean stops,
            @Nullable Instant arrival,
            @Nullable Instant departure,
            boolean takesWater) {}

    /**
     * An engine of the train.
     *
     * @param position FRONT, PILOT or REAR
     * @param fromPlace where it begins to assist, or null for the whole path
     * @param toPlace where it ends to assist, or null for the whole path
     * @param pressurePsi boiler pressure at the start, gauge
     * @param glassShare water in the glass at the start, from 0 (bottom nut) to 1 (top nut)
     * @param waterGallons in the tank at the start, imperial gallons, or null for full
     * @param coalCwt on the tender or in the bunker at the start, hundredweight, or null for full
     */
    public record EngineTurn(
            String engineNumber,
            EnginePosition position,
            @Nullable String fromPlace,
            @Nullable String toPlace,
            double pressurePsi,
            double glassShare,
            @Nullable Double waterGallons,
            @Nullable Double coalCwt) {}

    /** Place of an engine in the train. */
    public enum EnginePosition {
        FRONT,
        PILOT,
        REAR
    }

    /**
     * One person's work on the train.
     *
     * @param role what they do on it: DRIVER or FIREMAN, or INSPECTOR for whoever rides with it
     * @param engineNumber the engine they work
     * @param bookOn when they book on
     * @param bookOff when they book off
     */
    public record CrewSlot(
            String staffNumber,
            Post role,
            String engineNumber,
            @Nullable String fromPlace,
            @Nullable String toPlace,
            @Nullable Instant bookOn,
            @Nullable Instant bookOff) {}
}
