package org.crosshead.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;

/** Reads junctions and temporary restrictions. */
final class PlaceReader {

    private final Sheets sheets;
    private final MeasureUnits units;
    private final Moments moments;

    PlaceReader(Sheets sheets, MeasureUnits units, Moments moments) {
        this.sheets = sheets;
        this.units = units;
        this.moments = moments;
    }

    List<Located<JunctionDraft>> junctions() {
        return sheets.lines(ImportFile.JUNCTIONS).stream().map(this::junction).toList();
    }

    List<Located<RestrictionDraft>> restrictions() {
        return sheets.lines(ImportFile.RESTRICTIONS).stream()
                .map(this::restriction)
                .toList();
    }

    private Located<JunctionDraft> junction(Line line) {
        JunctionDraft draft = new JunctionDraft(
                line.text("name"),
                line.text("route_code"),
                units.measure(line, "at_measure", units.of(line, "route_code")),
                line.text("other_route_code"),
                units.measure(line, "other_measure", units.of(line, "other_route_code")));
        return new Located<>(draft, line, Map.of());
    }

    private Located<RestrictionDraft> restriction(Line line) {
        Optional<MeasureUnit> unit = units.of(line, "route_code");
        RestrictionDraft draft = new RestrictionDraft(
                line.text("number"),
                line.text("route_code"),
                units.measure(line, "from_measure", unit),
                units.measure(line, "to_measure", unit),
                line.number("limit"),
                line.word("limit_unit", SpeedUnit.class),
                line.word("scope", Scope.class),
                moments.moment(line, "first_time", moments.day(line, "first_day")),
                moments.moment(line, "last_time", moments.day(line, "last_day")),
                line.text("reason"));
        return new Located<>(draft, line, Map.of());
    }
}
