package org.crosshead.competence;

import java.time.Instant;
import org.crosshead.competence.KnowledgePolicy.Regime;
import org.jspecify.annotations.Nullable;

/**
 * That somebody is asked to go along as conductor driver.
 *
 * @param informedAt when the keeper of the line was told beforehand; null where they were not
 */
public record Conducting(
        long id,
        long trainId,
        long driverId,
        long conductorId,
        Case permitted,
        @Nullable Instant informedAt,
        String askedBy,
        State state) {

    /** By which case it is permitted; all but the last from memory of Directive 2007/59/EC, Article 4(2). */
    public enum Case {
        /** A diversion because of a disturbance or of works. */
        DIVERSION,
        /** A train of historical stock that runs but once. */
        HISTORICAL_TRAIN,
        /** A goods train that runs but once, with the agreement of the keeper of the line. */
        GOODS_ONCE,
        /** Delivery or demonstration of a train or engine. */
        DELIVERY,
        /** Training or examination of drivers. */
        TRAINING,
        /** The railway's own rule, where no such law holds. */
        OWN_RULE
    }

    /** What the conductor driver has said. */
    public enum State {
        ASKED,
        ACCEPTED,
        DECLINED
    }

    /** Says whether it is permitted on a line of this law: on the main line by a case of the law, of which the keeper of the line is told. */
    public boolean isPermitted(Regime regime) {
        return regime != Regime.MAIN_LINE || (permitted != Case.OWN_RULE && informedAt != null);
    }
}
