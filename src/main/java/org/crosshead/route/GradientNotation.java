package org.crosshead.route;

import org.crosshead.kernel.units.Units;

/** How the source prints a gradient. The value is signed: positive when climbing as the measure rises. */
public enum GradientNotation {
    /** 1 in n; the value is n. */
    ONE_IN,
    PER_MILLE,
    /** The value is ignored and stored as 0. */
    LEVEL;

    /** Returns the gradient (rise over run) that a value says. */
    public double gradient(double value) {
        return switch (this) {
            case ONE_IN -> Units.gradientFromOneIn(value);
            case PER_MILLE -> Units.gradientFromPerMille(value);
            case LEVEL -> 0;
        };
    }
}
