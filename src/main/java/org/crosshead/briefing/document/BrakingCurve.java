package org.crosshead.briefing.document;

import java.util.List;

/**
 * Speed over distance under one application, from where it is decided until the wanted speed.
 *
 * @param kind {@code service-dry}, {@code service-greasy}, {@code emergency-dry} or {@code emergency-greasy}
 * @param metres from the place of the decision, rising
 * @param mps speed there
 */
public record BrakingCurve(String kind, List<Double> metres, List<Double> mps) {

    public BrakingCurve {
        metres = List.copyOf(metres);
        mps = List.copyOf(mps);
    }
}
