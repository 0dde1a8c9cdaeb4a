package org.crosshead.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
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
        return posts.stream().anyMatch(held -> held.post() == post && held.covers(day));
    }

    /** Returns whether they may take a role on a train on the day: who rides with it is an inspector, an assessor, or a driver who conducts or learns. */
    public boolean mayTake(Post role, LocalDate day) {
        boolean rides = role == Post.INSPECTOR && (holds(Post.DRIVER, day) || holds(Post.ASSESSOR, day));
        return rides || holds(role, day);
    }

    /** Returns the depots from which they work on the day, in the order of the alphabet; none where none is said. */
    public List<String> depots(LocalDate day) {
        return posts.stream()
                .filter(held -> held.covers(day))
                .map(PostHeld::depot)
                .filter(Objects::nonNull)
                .distinct()
                .sorted()
                .toList();
    }
}
