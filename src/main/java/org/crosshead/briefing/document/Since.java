package org.crosshead.briefing.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is different from the issue before.
 *
 * @param issueNumber number of that issue
 * @param changes in the order of the page; empty where nothing that is shown differs
 */
public record Since(int issueNumber, List<Change> changes) {

    public Since {
        changes = List.copyOf(changes);
    }

    /**
     * One difference, worded by message {@code change.<kind>}.
     *
     * @param place where on the road, or null
     * @param now how it stands now, or null where it is gone
     * @param was how it stood before, without figures to open, or null where it is new
     */
    public record Change(
            String kind,
            @Nullable Place place,
            @Nullable Phrase now,
            @Nullable Phrase was) {}
}
