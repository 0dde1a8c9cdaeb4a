package org.crosshead.route;

/** What a crew meets along a route. */
public enum FeatureKind {
    STATION,
    TIMING_POINT,
    SIGNAL,
    LEVEL_CROSSING,
    TUNNEL,
    BRIDGE,
    SUMMIT,
    WATER_COLUMN,
    WATER_TROUGH,
    CATCH_POINTS,
    LANDMARK,
    POOR_ADHESION,
    OVERHEAD_WIRES,
    WHISTLE_BOARD,
    /** Warns of a reduction of speed ahead; its detail is the number of a temporary restriction, or blank. */
    WARNING_BOARD,
    HAZARD,
    TURNTABLE
}
