package org.crosshead.crew;

/** Somebody else has entered or changed the same person meanwhile. Nothing was stored. */
public final class PersonChangedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    PersonChangedException() {
        super("a person was changed by somebody else at the same moment");
    }
}
