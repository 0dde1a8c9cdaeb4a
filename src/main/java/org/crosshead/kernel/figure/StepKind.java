package org.crosshead.kernel.figure;

/** What a step does. */
public enum StepKind {
    /** Works the result out of the inputs by the expression. */
    FORMULA,
    /** Adds a safety margin to an earlier result by the expression. */
    MARGIN,
    /**
     * Reads a value from the forecast run. The expression is the balance of force (or heat) at that place and the result its
     * outcome there (acceleration, or rate of change of heat); the figure's value is repeated by running again.
     */
    RUN,
    /** A stored value, with no arithmetic: the expression is the one symbol. */
    GIVEN
}
