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
    HAZARD,
    TURNTABLE
}
