package org.crosshead.exchange;

import static org.crosshead.exchange.CellKind.*;
import static org.crosshead.exchange.Column.needed;
import static org.crosshead.exchange.Column.neededWord;
import static org.crosshead.exchange.Column.optional;
import static org.crosshead.exchange.Column.optionalWord;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.crosshead.competence.CompetenceEvent;
import org.crosshead.competence.Subject;
import org.crosshead.crew.Post;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.platform.Origin;
import org.crosshead.route.Direction;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.crosshead.route.TrainKind;
import org.crosshead.routeknowledge.Band;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.stock.Bearing;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.working.TrainDraft.EnginePosition;

/** Every file that can be imported, known by its name, with its columns. */
public enum ImportFile {
    PEOPLE(needed("staff_number", TEXT), needed("name", TEXT)),
    POSTS(
            needed("staff_number", TEXT),
            neededWord("post", Post.class),
            needed("first_day", DAY),
            optional("last_day", DAY),
            optional("depot", TEXT)),
    ROUTES(
            needed("code", TEXT),
            needed("name", TEXT),
            neededWord("measure_unit", MeasureUnit.class),
            needed("rising_name", TEXT),
            needed("falling_name", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            needed("lines", TEXT),
            needed("estimates_accepted", YES_NO)),
    GRADIENTS(
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            neededWord("notation", GradientNotation.class),
            optional("value", NUMBER),
            neededWord("origin", Origin.class),
            optional("note", TEXT)),
    CURVES(
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            needed("radius", NUMBER),
            neededWord("radius_unit", LengthUnit.class),
            neededWord("origin", Origin.class),
            optional("note", TEXT)),
    LIMITS(
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            needed("limit", NUMBER),
            neededWord("limit_unit", SpeedUnit.class),
            neededWord("scope", Scope.class),
            optionalWord("train_kind", TrainKind.class),
            needed("tender_first", YES_NO),
            neededWord("origin", Origin.class),
            optional("note", TEXT)),
    FEATURES(
            needed("route_code", TEXT),
            neededWord("kind", FeatureKind.class),
            needed("at_measure", MEASURE),
            optional("to_measure", MEASURE),
            optional("name", TEXT),
            neededWord("scope", Scope.class),
            optional("line", TEXT),
            optional("detail", TEXT),
            optional("sighting", NUMBER),
            optional("length", NUMBER),
            optionalWord("length_unit", LengthUnit.class),
            needed("seen_by_day", YES_NO),
            needed("seen_by_night", YES_NO),
            neededWord("origin", Origin.class),
            optional("note", TEXT)),
    JUNCTIONS(
            needed("name", TEXT),
            needed("route_code", TEXT),
            needed("at_measure", MEASURE),
            needed("other_route_code", TEXT),
            needed("other_measure", MEASURE)),
    RESTRICTIONS(
            needed("number", TEXT),
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            needed("limit", NUMBER),
            neededWord("limit_unit", SpeedUnit.class),
            neededWord("scope", Scope.class),
            needed("first_day", DAY),
            needed("first_time", TIME),
            needed("last_day", DAY),
            needed("last_time", TIME),
            needed("reason", TEXT)),
    CLASSES(
            needed("code", TEXT),
            needed("name", TEXT),
            optional("description", TEXT),
            needed("tender_engine", YES_NO),
            neededWord("valve_family", ValveFamily.class),
            neededWord("engine_brake", BrakeKind.class),
            neededWord("train_brake", BrakeKind.class)),
    CLASS_FIGURES(figures("class_code")),
    CLASS_NOTES(needed("class_code", TEXT), neededWord("topic", NoteTopic.class), needed("text", TEXT)),
    ENGINES(needed("number", TEXT), optional("name", TEXT), needed("class_code", TEXT), optional("remarks", TEXT)),
    ENGINE_FIGURES(figures("engine_number")),
    VEHICLE_KINDS(
            needed("code", TEXT),
            needed("name", TEXT),
            neededWord("family", ResistanceFamily.class),
            neededWord("brake", BrakeKind.class),
            neededWord("bearing", Bearing.class)),
    VEHICLE_FIGURES(figures("kind_code")),
    FORMATIONS(needed("code", TEXT), needed("name", TEXT)),
    FORMATION_ITEMS(
            needed("formation_code", TEXT),
            needed("vehicle_kind_code", TEXT),
            needed("count", WHOLE),
            optional("load_tons", NUMBER),
            optional("vehicle_number", TEXT),
            needed("brake_working", YES_NO)),
    TRAINS(
            needed("code", TEXT),
            needed("title", TEXT),
            needed("day", DAY),
            neededWord("kind", TrainKind.class),
            optional("formation_code", TEXT),
            neededWord("rail", RailState.class),
            optional("weather", TEXT),
            needed("dark", YES_NO),
            needed("heated", YES_NO)),
    LEGS(
            needed("train_code", TEXT),
            needed("day", DAY),
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            needed("line", TEXT),
            neededWord("direction", Direction.class),
            needed("tender_first", YES_NO)),
    CALLS(
            needed("train_code", TEXT),
            needed("day", DAY),
            needed("leg_number", WHOLE),
            needed("at_measure", MEASURE),
            needed("place", TEXT),
            needed("stops", YES_NO),
            optional("arrival", TIME),
            optional("departure", TIME),
            needed("takes_water", YES_NO)),
    ENGINE_TURNS(
            needed("train_code", TEXT),
            needed("day", DAY),
            needed("engine_number", TEXT),
            neededWord("position", EnginePosition.class),
            optional("from_place", TEXT),
            optional("to_place", TEXT),
            needed("pressure_psi", NUMBER),
            needed("glass_share", NUMBER),
            optional("water_gallons", NUMBER),
            optional("coal_cwt", NUMBER)),
    CREW_SLOTS(
            needed("train_code", TEXT),
            needed("day", DAY),
            needed("staff_number", TEXT),
            neededWord("role", Post.class),
            needed("engine_number", TEXT),
            optional("from_place", TEXT),
            optional("to_place", TEXT),
            optional("book_on", TIME),
            optional("book_off", TIME)),
    SECTIONS(
            needed("code", TEXT),
            needed("title", TEXT),
            needed("route_code", TEXT),
            needed("from_measure", MEASURE),
            needed("to_measure", MEASURE),
            neededWord("direction", Direction.class),
            neededWord("band", Band.class),
            needed("hard", TEXT),
            optional("teacher", TEXT),
            optional("line", TEXT),
            optional("trips", WHOLE),
            optional("trips_dark", WHOLE),
            optional("trips_driven", WHOLE),
            optional("trips_bad_weather", WHOLE),
            optional("trips_refresher", WHOLE)),
    CUES(
            needed("section_code", TEXT),
            needed("feature_name", TEXT),
            neededWord("tells", Cue.Tells.class),
            needed("meaning", TEXT),
            needed("missed", TEXT)),
    CLASS_GUIDES(
            needed("class_code", TEXT),
            optional("similar_to", TEXT),
            needed("differences", TEXT),
            optional("teacher", TEXT),
            optional("trips", WHOLE),
            optional("trips_dark", WHOLE),
            optional("trips_driven", WHOLE),
            optional("trips_bad_weather", WHOLE),
            optional("trips_refresher", WHOLE),
            optional("briefed_from", DAY)),
    KNOWLEDGE(
            needed("staff_number", TEXT),
            neededWord("event", CompetenceEvent.Kind.class),
            neededWord("subject", Subject.Kind.class),
            needed("subject_code", TEXT),
            needed("day", DAY),
            optional("other", TEXT),
            optional("until", DAY),
            optional("note", TEXT)),
    POLICY_FIGURES(
            needed("key", TEXT),
            needed("value", NUMBER),
            neededWord("origin", Origin.class),
            needed("source", TEXT),
            needed("owner", TEXT),
            needed("valid_from", DAY));

    @SuppressWarnings("ImmutableEnumChecker") // List.of over immutable records, but not so marked
    private final List<Column> columns;

    ImportFile(Column... columns) {
        this.columns = List.of(columns);
    }

    /** Returns the name that the file must have. */
    public String fileName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-') + ".csv";
    }

    public List<Column> columns() {
        return columns;
    }

    /** Returns the header row of the file. */
    public String header() {
        return columns.stream().map(Column::name).collect(Collectors.joining(","));
    }

    Optional<Column> column(String name) {
        return columns.stream().filter(column -> column.name().equals(name)).findFirst();
    }

    /** Returns the file of this name, whatever folder it lies in. */
    static Optional<ImportFile> named(String fileName) {
        String last = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        return Arrays.stream(values())
                .filter(file -> file.fileName().equals(last.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static Column[] figures(String ownerColumn) {
        return new Column[] {
            needed(ownerColumn, TEXT),
            needed("key", TEXT),
            optional("value", NUMBER),
            optional("unit", TEXT),
            neededWord("origin", Origin.class),
            optional("note", TEXT),
            needed("accepted", YES_NO)
        };
    }
}
