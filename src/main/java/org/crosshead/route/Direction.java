package org.crosshead.route;

/** Direction of running against the route's measure. */
public enum Direction {
    /** The measure rises. */
    RISING,
    /** The measure falls. */
    FALLING;

    public Direction opposite() {
        return this == RISING ? FALLING : RISING;
    }
}
