package org.crosshead.crew;

import static org.crosshead.crew.PersonProblem.refused;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.jspecify.annotations.Nullable;

/** Checks a person: a number that can stand in an address, a name, and posts that run forward and do not overlap. */
final class PersonRules {

    static final int NAME_LENGTH_MAX = 100;
    static final int POSTS_MAX = 50;
    static final int DEPOT_LENGTH_MAX = 60;

    /** At least one figure, so that it is never mistaken for a word in an address. */
    private static final Pattern STAFF_NUMBER = Pattern.compile("(?=.*[0-9])[A-Za-z0-9][A-Za-z0-9._-]{0,19}");

    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2199, 12, 31);

    private PersonRules() {}

    static List<PersonProblem> problems(PersonDraft draft) {
        List<PersonProblem> problems = new ArrayList<>();
        if (!STAFF_NUMBER.matcher(draft.staffNumber()).matches()) {
            problems.add(refused("staffNumber", "staff-number"));
        }
        if (draft.name().isBlank()) {
            problems.add(refused("name", "name-needed"));
        } else if (draft.name().length() > NAME_LENGTH_MAX) {
            problems.add(refused("name", "too-long", NAME_LENGTH_MAX));
        }
        if (draft.posts().size() > POSTS_MAX) {
            problems.add(refused("posts", "too-many-posts", POSTS_MAX));
            return problems;
        }
        for (int i = 0; i < draft.posts().size(); i++) {
            problems.addAll(post(draft.posts(), i));
        }
        return problems;
    }

    private static List<PersonProblem> post(List<PostHeld> posts, int index) {
        PostHeld held = posts.get(index);
        String field = "posts[" + index + "].";
        LocalDate lastDay = held.lastDay();
        String depot = held.depot();
        if (depot != null && depot.isBlank()) {
            return List.of(refused(field + "depot", "depot-blank"));
        }
        if (depot != null && depot.length() > DEPOT_LENGTH_MAX) {
            return List.of(refused(field + "depot", "too-long", DEPOT_LENGTH_MAX));
        }
        if (outside(held.firstDay())) {
            return List.of(refused(field + "firstDay", "day-outside"));
        }
        if (lastDay != null && outside(lastDay)) {
            return List.of(refused(field + "lastDay", "day-outside"));
        }
        if (lastDay != null && lastDay.isBefore(held.firstDay())) {
            return List.of(refused(field + "lastDay", "last-before-first"));
        }
        return posts.subList(0, index).stream().anyMatch(other -> overlap(other, held))
                ? List.of(refused(field + "firstDay", "post-twice"))
                : List.of();
    }

    private static boolean outside(LocalDate day) {
        return day.isBefore(FIRST_DAY) || day.isAfter(LAST_DAY);
    }

    private static boolean overlap(PostHeld one, PostHeld other) {
        return one.post() == other.post()
                && notAfter(one.firstDay(), other.lastDay())
                && notAfter(other.firstDay(), one.lastDay());
    }

    private static boolean notAfter(LocalDate day, @Nullable LocalDate lastDay) {
        return lastDay == null || !day.isAfter(lastDay);
    }
}
