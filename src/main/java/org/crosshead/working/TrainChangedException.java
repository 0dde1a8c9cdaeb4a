package org.crosshead.working;

/** Somebody else changed the train since it was opened. Nothing was stored. */
public final class TrainChangedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TrainChangedException(String code) {
        super("train " + code + " was changed by somebody else meanwhile");
    }
}
