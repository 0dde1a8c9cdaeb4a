package org.crosshead.working.web;

import static org.crosshead.working.web.TypedFields.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The form of a train: texts as typed, so that what can't be read comes back as it was. A box that is ticked says "true". Rows in
 * which nothing is typed are left out.
 *
 * @param version version of the train from which the form was filled
 */
record TrainForm(
        String code,
        String title,
        String day,
        String kind,
        String formationCode,
        String rail,
        String weather,
        String dark,
        String heated,
        String version,
        String reason,
        List<LegRow> legs,
        List<CallRow> calls,
        List<EngineRow> engines,
        List<CrewRow> crew) {

    private static final int BLANK_ROWS = 2;

    TrainForm {
        code = text(code);
        title = text(title);
        day = text(day);
        kind = text(kind);
        formationCode = text(formationCode);
        rail = text(rail);
        weather = text(weather);
        dark = text(dark);
        heated = text(heated);
        version = text(version);
        reason = text(reason);
        legs = said(legs, LegRow::isSaid);
        calls = said(calls, CallRow::isSaid);
        engines = said(engines, EngineRow::isSaid);
        crew = said(crew, CrewRow::isSaid);
    }

    TrainForm with(List<CallRow> inOrder) {
        return new TrainForm(
                code,
                title,
                day,
                kind,
                formationCode,
                rail,
                weather,
                dark,
                heated,
                version,
                reason,
                legs,
                inOrder,
                engines,
                crew);
    }

    /** Returns the rows with blank ones after them. */
    public List<LegRow> legRows() {
        return withBlank(legs, () -> new LegRow("", "", "", "", ""));
    }

    /** Returns the rows with blank ones after them. */
    public List<CallRow> callRows() {
        return withBlank(calls, () -> new CallRow("", "", "", "", "", "", ""));
    }

    /** Returns the rows with blank ones after them. */
    public List<EngineRow> engineRows() {
        return withBlank(engines, () -> new EngineRow("", "", "", "", "", "", "", ""));
    }

    /** Returns the rows with blank ones after them. */
    public List<CrewRow> crewRows() {
        return withBlank(crew, () -> new CrewRow("", "", "", "", "", "", ""));
    }

    private static <T> List<T> withBlank(List<T> rows, Supplier<T> blank) {
        List<T> all = new ArrayList<>(rows);
        for (int i = 0; i < BLANK_ROWS; i++) {
            all.add(blank.get());
        }
        return all;
    }

    /** A list is null, and has nulls in it, where the browser sent nothing of it. */
    private static <T> List<T> said(@Nullable List<T> rows, Predicate<T> isSaid) {
        return rows == null
                ? List.of()
                : rows.stream().filter(Objects::nonNull).filter(isSaid).toList();
    }

    private static boolean any(String... fields) {
        return !String.join("", fields).isEmpty();
    }

    /** One leg of the path as typed. */
    record LegRow(String routeCode, String line, String fromMeasure, String toMeasure, String tenderFirst) {

        LegRow {
            routeCode = text(routeCode);
            line = text(line);
            fromMeasure = text(fromMeasure);
            toMeasure = text(toMeasure);
            tenderFirst = text(tenderFirst);
        }

        boolean isSaid() {
            return any(routeCode, line, fromMeasure, toMeasure);
        }
    }

    /** One call as typed. */
    record CallRow(
            String place,
            String legNumber,
            String atMeasure,
            String stops,
            String arrival,
            String departure,
            String takesWater) {

        CallRow {
            place = text(place);
            legNumber = text(legNumber);
            atMeasure = text(atMeasure);
            stops = text(stops);
            arrival = text(arrival);
            departure = text(departure);
            takesWater = text(takesWater);
        }

        boolean isSaid() {
            return any(place, legNumber, atMeasure, arrival, departure);
        }
    }

    /**
     * One engine as typed.
     *
     * @param glassShare in per cent of the glass
     */
    record EngineRow(
            String engineNumber,
            String position,
            String fromPlace,
            String toPlace,
            String pressurePsi,
            String glassShare,
            String waterGallons,
            String coalCwt) {

        EngineRow {
            engineNumber = text(engineNumber);
            position = text(position);
            fromPlace = text(fromPlace);
            toPlace = text(toPlace);
            pressurePsi = text(pressurePsi);
            glassShare = text(glassShare);
            waterGallons = text(waterGallons);
            coalCwt = text(coalCwt);
        }

        boolean isSaid() {
            return any(engineNumber, fromPlace, toPlace, pressurePsi, glassShare, waterGallons, coalCwt);
        }
    }

    /** One person's work as typed. */
    record CrewRow(
            String staffNumber,
            String role,
            String engineNumber,
            String fromPlace,
            String toPlace,
            String bookOn,
            String bookOff) {

        CrewRow {
            staffNumber = text(staffNumber);
            role = text(role);
            engineNumber = text(engineNumber);
            fromPlace = text(fromPlace);
            toPlace = text(toPlace);
            bookOn = text(bookOn);
            bookOff = text(bookOff);
        }

        boolean isSaid() {
            return any(staffNumber, engineNumber, fromPlace, toPlace, bookOn, bookOff);
        }
    }
}
