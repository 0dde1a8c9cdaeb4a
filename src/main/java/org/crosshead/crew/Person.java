package org.crosshead.crew;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.crew.PersonDraft.PostHeld;

/**
 * A person of the railway as stored.
 *
 * @param staffNumber number by which the railway calls them, unique
 * @param posts posts held now, before or later, by post and first day
 */
public record Person(long id, String staffNumber, String name, List<PostHeld> posts) {

    public Person {
        posts = List.copyOf(posts);
    }

    /** Returns whether the post is held on the day; first and last day are included. */
    public boolean holds(Post post, LocalDate day) {
        return posts.stream().anyMatch(held -> held.post() == post && covers(held, day));
    }

    private static boolean covers(PostHeld held, LocalDate day) {
        LocalDate lastDay = held.lastDay();
        return !day.isBefore(held.firstDay()) && (lastDay == null || !day.isAfter(lastDay));
    }
}
