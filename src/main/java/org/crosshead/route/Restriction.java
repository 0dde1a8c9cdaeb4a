package org.crosshead.route;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A temporary restriction as it was entered.
 *
 * @param withdrawnAt from when it no longer holds, or null
 */
public record Restriction(
        long id,
        RestrictionDraft draft,
        Instant enteredAt,
        String enteredBy,
        @Nullable Instant withdrawnAt) {}
