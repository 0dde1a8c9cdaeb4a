package org.crosshead.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Those who hold a post at a depot.
 *
 * @param post null for any
 * @param depot null for any, and for those of whom no depot is said
 */
public record Group(@Nullable Post post, @Nullable String depot) {

    /** All who hold any post. */
    public static final Group EVERYBODY = new Group(null, null);

    /** Returns the ids of those who are of it on a day. */
    public Set<Long> members(List<Person> people, LocalDate day) {
        return people.stream()
                .filter(person -> includes(person, day))
                .map(Person::id)
                .collect(Collectors.toSet());
    }

    /** Returns whether somebody is one of them on a day; who has left is of no group. */
    public boolean includes(Person person, LocalDate day) {
        return person.posts().stream()
                .anyMatch(held -> held.covers(day)
                        && (post == null || post == held.post())
                        && (depot == null || depot.equals(held.depot())));
    }
}
