package org.crosshead.stock.figure;

import java.util.Map;
import java.util.Optional;

/** Figures that may be used, in the kernel's units, by key. */
public record KnownFigures(Map<String, Double> siByKey) {

    public KnownFigures {
        siByKey = Map.copyOf(siByKey);
    }

    public Optional<Double> si(FigureSpec spec) {
        return Optional.ofNullable(siByKey.get(spec.key()));
    }

    public boolean has(FigureSpec spec) {
        return siByKey.containsKey(spec.key());
    }
}
