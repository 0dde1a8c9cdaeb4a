package org.crosshead.working;

import java.time.Instant;

/**
 * A train on a day at its current or an earlier revision.
 *
 * @param version counts every change, for noticing that two people change it at once
 * @param revisionId id of the revision shown
 * @param revision number of the revision, from 1
 */
public record Train(
        long id,
        long version,
        boolean cancelled,
        long revisionId,
        int revision,
        Instant madeAt,
        String madeBy,
        String reason,
        TrainDraft content) {}
