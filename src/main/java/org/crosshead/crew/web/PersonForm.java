package org.crosshead.crew.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.crew.PersonProblem;
import org.crosshead.crew.Post;
import org.springframework.util.MultiValueMap;

/** A person as typed: kept as typed until it is right. */
record PersonForm(String staffNumber, String name, List<PostRow> posts) {

    /** Rows left empty for further posts. */
    private static final int EMPTY_ROWS = 2;

    private static final int ROWS_MAX = 60;

    PersonForm {
        posts = List.copyOf(posts);
    }

    /** One row of the table of posts; all empty means no post. */
    record PostRow(String post, String depot, String firstDay, String lastDay) {

        boolean empty() {
            return post.isEmpty() && depot.isEmpty() && firstDay.isEmpty() && lastDay.isEmpty();
        }
    }

    static PersonForm empty() {
        return new PersonForm("", "", List.of()).withEmptyRows();
    }

    static PersonForm of(Person person) {
        List<PostRow> rows = person.posts().stream()
                .map(held -> new PostRow(
                        held.post().name(),
                        Optional.ofNullable(held.depot()).orElse(""),
                        held.firstDay().toString(),
                        Optional.ofNullable(held.lastDay())
                                .map(LocalDate::toString)
                                .orElse("")))
                .toList();
        return new PersonForm(person.staffNumber(), person.name(), rows).withEmptyRows();
    }

    static PersonForm of(String staffNumber, MultiValueMap<String, String> typed) {
        List<String> posts = typed.getOrDefault("post", List.of());
        List<PostRow> rows = new ArrayList<>();
        for (int i = 0; i < Math.min(posts.size(), ROWS_MAX); i++) {
            rows.add(new PostRow(
                    at(typed, "post", i), at(typed, "depot", i), at(typed, "firstDay", i), at(typed, "lastDay", i)));
        }
        return new PersonForm(staffNumber.strip(), at(typed, "name", 0), rows);
    }

    PersonForm withEmptyRows() {
        Stream<PostRow> filled = posts.stream().filter(row -> !row.empty());
        Stream<PostRow> empty =
                Stream.generate(() -> new PostRow("", "", "", "")).limit(EMPTY_ROWS);
        return new PersonForm(staffNumber, name, Stream.concat(filled, empty).toList());
    }

    /** Returns the rows that are not empty: the posts of the draft, in its order. */
    PersonForm withoutEmptyRows() {
        return new PersonForm(
                staffNumber, name, posts.stream().filter(row -> !row.empty()).toList());
    }

    /** Returns what can't be read; empty means that the draft can be made. */
    List<PersonProblem> unreadable() {
        List<PersonProblem> problems = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            PostRow row = posts.get(i);
            String field = "posts[" + i + "].";
            if (post(row.post()).isEmpty()) {
                problems.add(new PersonProblem(field + "post", "crew.refused.post-needed", List.of()));
            }
            if (day(row.firstDay()).isEmpty()) {
                problems.add(new PersonProblem(field + "firstDay", "crew.refused.day", List.of()));
            }
            if (!row.lastDay().isEmpty() && day(row.lastDay()).isEmpty()) {
                problems.add(new PersonProblem(field + "lastDay", "crew.refused.day", List.of()));
            }
        }
        return problems;
    }

    PersonDraft toDraft() {
        return new PersonDraft(
                staffNumber,
                name,
                posts.stream()
                        .map(row -> new PostHeld(
                                post(row.post()).orElseThrow(),
                                row.depot().isEmpty() ? null : row.depot(),
                                day(row.firstDay()).orElseThrow(),
                                day(row.lastDay()).orElse(null)))
                        .toList());
    }

    private static String at(MultiValueMap<String, String> typed, String key, int index) {
        List<String> values = typed.getOrDefault(key, List.of());
        return index < values.size() ? values.get(index).strip() : "";
    }

    private static Optional<Post> post(String name) {
        return Stream.of(Post.values()).filter(post -> post.name().equals(name)).findFirst();
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException ex) {
            return Optional.empty();
        }
    }
}
