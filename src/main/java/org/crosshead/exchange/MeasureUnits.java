package org.crosshead.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.jspecify.annotations.Nullable;

/** How each route is measured: as the files say, or else as it is stored. Reads positions accordingly. */
final class MeasureUnits {

    private final Map<String, Optional<MeasureUnit>> known = new HashMap<>();
    private final Function<String, Optional<MeasureUnit>> stored;
    private final ProblemList problems;

    MeasureUnits(Sheets sheets, Function<String, Optional<MeasureUnit>> stored, ProblemList problems) {
        this.stored = stored;
        this.problems = problems;
        sheets.lines(ImportFile.ROUTES)
                .forEach(line -> known.put(
                        line.text("code"), Optional.ofNullable(line.wordOrNull("measure_unit", MeasureUnit.class))));
    }

    /** Returns the unit of the route that a column names, refusing a route that is neither in the files nor stored. */
    Optional<MeasureUnit> of(Line line, String routeColumn) {
        String code = line.text(routeColumn);
        boolean inFiles = known.containsKey(code);
        Optional<MeasureUnit> unit = known.computeIfAbsent(code, stored);
        if (!inFiles && unit.isEmpty() && !code.isEmpty()) {
            known.remove(code);
            problems.refuse(line, routeColumn, "route-unknown", code);
        }
        return unit;
    }

    double measure(Line line, String column, Optional<MeasureUnit> unit) {
        Double measure = measureOrNull(line, column, unit);
        return measure == null ? 0 : measure;
    }

    @Nullable
    Double measureOrNull(Line line, String column, Optional<MeasureUnit> unit) {
        String cell = line.text(column);
        if (cell.isEmpty() || unit.isEmpty()) {
            return null;
        }
        Optional<Double> measure = Measures.parse(cell, unit.get());
        boolean rightElsewhere = CellRules.isMeasure(cell);
        if (measure.isEmpty() && rightElsewhere) {
            problems.refuse(line, column, unit.get() == MeasureUnit.CHAINS ? "measure-chains" : "measure-km", cell);
        }
        return measure.orElse(null);
    }
}
