package org.crosshead.route;

/** Somebody else has made a revision meanwhile. Nothing was stored. */
public final class RouteChangedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String code;

    RouteChangedException(String code) {
        super("changed meanwhile: " + code);
        this.code = code;
    }

    /** Returns the code of the route. */
    public String code() {
        return code;
    }
}
