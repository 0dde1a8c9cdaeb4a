package org.crosshead.working;

import java.util.Optional;

/** A word on a train's page that another capability has to say of it; every one may contribute one. */
@FunctionalInterface
public interface TrainNote {

    /** Returns the code of the message, or nothing. */
    Optional<String> of(long trainId);
}
