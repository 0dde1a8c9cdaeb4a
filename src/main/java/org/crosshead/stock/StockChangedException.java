package org.crosshead.stock;

/** Somebody else has made a revision meanwhile. Nothing was stored. */
public final class StockChangedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String code;

    StockChangedException(String code) {
        super("changed meanwhile: " + code);
        this.code = code;
    }

    /** Returns the code of the class or kind, or the number of the engine. */
    public String code() {
        return code;
    }
}
