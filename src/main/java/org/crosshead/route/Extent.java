package org.crosshead.route;

/** The measures from which to which a route runs. Positions closer than a millionth of the unit are the same. */
record Extent(double fromMeasure, double toMeasure, MeasureUnit unit) {

    private static final double SAME = 1e-6;

    static Extent of(RouteDraft draft) {
        return new Extent(draft.fromMeasure(), draft.toMeasure(), draft.measureUnit());
    }

    static boolean same(double measure, double other) {
        return Math.abs(measure - other) <= SAME;
    }

    boolean holds(double measure) {
        return measure >= fromMeasure - SAME && measure <= toMeasure + SAME;
    }

    /** Refuses a length that runs backwards, has none, or leaves the route. Returns whether it was in order. */
    boolean checkLength(double from, double to, Problems problems) {
        boolean outside = checkPlace("fromMeasure", from, problems);
        outside |= checkPlace("toMeasure", to, problems);
        return !outside && !problems.refuseIf(!(to - from > SAME), "toMeasure", "backwards", text(from), text(to));
    }

    /** Refuses a place outside the route. Returns whether it was refused. */
    boolean checkPlace(String field, double measure, Problems problems) {
        return problems.refuseIf(!holds(measure), field, "outside", text(measure), text(fromMeasure), text(toMeasure));
    }

    String text(double measure) {
        return Double.isFinite(measure) && measure >= 0 ? Measures.exact(measure, unit) : Double.toString(measure);
    }
}
