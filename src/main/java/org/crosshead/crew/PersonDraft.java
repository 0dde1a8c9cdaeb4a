package org.crosshead.crew;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A person as somebody enters them.
 *
 * @param staffNumber number by which the railway calls them, unique
 */
public record PersonDraft(String staffNumber, String name, List<PostHeld> posts) {

    public PersonDraft {
        posts = List.copyOf(posts);
    }

    /**
     * A post held over a time.
     *
     * @param depot from which they work in it, or null where that is not said
     * @param firstDay first day, included
     * @param lastDay last day, included, or null while it lasts
     */
    public record PostHeld(
            Post post,
            @Nullable String depot,
            LocalDate firstDay,
            @Nullable LocalDate lastDay) {

        /** A post of which no depot is said. */
        public PostHeld(Post post, LocalDate firstDay, @Nullable LocalDate lastDay) {
            this(post, null, firstDay, lastDay);
        }

        boolean covers(LocalDate day) {
            return !day.isBefore(firstDay) && (lastDay == null || !day.isAfter(lastDay));
        }
    }
}
