package org.crosshead.stock.figure;

import java.util.Optional;
import java.util.function.Function;

/**
 * A rule by which an unknown figure may be estimated. An estimate is offered, and counts only once a person has accepted it.
 *
 * @param words the rule in words, stored with the figure when it is accepted, so that an old record keeps its own rule
 * @param si the estimate in the kernel's unit, or empty while the figures that it rests on are unknown
 */
public record EstimateRule(String words, Function<KnownFigures, Optional<Double>> si) {

    static EstimateRule fixed(String words, FigureUnit unit, double value) {
        return new EstimateRule(words, known -> Optional.of(unit.toSi(value)));
    }

    static EstimateRule share(String words, FigureSpec of, double share) {
        return new EstimateRule(words, known -> known.si(of).map(value -> value * share));
    }
}
