package org.crosshead.route;

/** For which direction of running a limit or feature holds. */
public enum Scope {
    BOTH,
    RISING,
    FALLING;

    public boolean covers(Direction direction) {
        return this == BOTH || name().equals(direction.name());
    }
}
