package org.crosshead.exchange;

/** What a cell of a column must look like; worded on the page from {@code exchange.kind.<name>}. */
public enum CellKind {
    TEXT,
    /** A number without fraction. */
    WHOLE,
    NUMBER,
    /** A position along a route, as the route is measured. */
    MEASURE,
    YES_NO,
    /** One of the column's words. */
    WORD,
    /** A day, or a number of days from the day of the import. */
    DAY,
    /** A time on the train's day by the railway's clock; hours from 24 are past midnight. */
    TIME
}
