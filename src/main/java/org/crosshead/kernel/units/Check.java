package org.crosshead.kernel.units;

/** Guards on arguments. Each message names the value with its unit, the limits and what was got; NaN is always refused. */
public final class Check {

    private Check() {}

    /**
     * Returns the value if it lies from {@code min} to {@code max}, both included.
     *
     * @throws IllegalArgumentException if it does not, or is not a number
     */
    public static double within(String name, double value, double min, double max) {
        if (!(value >= min && value <= max)) {
            throw new IllegalArgumentException(name + " must be from " + min + " to " + max + ", but was " + value);
        }
        return value;
    }

    /**
     * Returns the value if it is greater than zero and finite.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be greater than 0, but was " + value);
        }
        return value;
    }

    /**
     * Returns the value if it is zero or greater and finite.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double notNegative(String name, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be 0 or greater, but was " + value);
        }
        return value;
    }

    /**
     * Refuses when a condition between several arguments does not hold.
     *
     * @throws IllegalArgumentException with the message if {@code holds} is false
     */
    public static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
