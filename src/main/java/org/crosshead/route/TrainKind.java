package org.crosshead.route;

/** Kind of train, as far as limits and brakes tell them apart. */
public enum TrainKind {
    PASSENGER,
    FITTED_GOODS,
    UNFITTED_GOODS,
    LIGHT_ENGINE
}
