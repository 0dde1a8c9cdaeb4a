package org.crosshead.crew.web;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft.PostHeld;

/** What the list of people shows: for each what is held today, what has lapsed and what is still to come. */
record PeoplePage(LocalDate today, List<Row> rows, boolean mayEdit) {

    PeoplePage {
        rows = List.copyOf(rows);
    }

    static PeoplePage of(LocalDate today, List<Person> people, boolean mayEdit) {
        return new PeoplePage(
                today, people.stream().map(person -> Row.of(person, today)).toList(), mayEdit);
    }

    record Row(String staffNumber, String name, List<PostHeld> held, List<PostHeld> lapsed, List<PostHeld> later) {

        static Row of(Person person, LocalDate today) {
            return new Row(
                    person.staffNumber(),
                    person.name(),
                    person.posts().stream()
                            .filter(post -> !lapsed(post, today) && !later(post, today))
                            .toList(),
                    person.posts().stream().filter(post -> lapsed(post, today)).toList(),
                    person.posts().stream().filter(post -> later(post, today)).toList());
        }

        private static boolean lapsed(PostHeld post, LocalDate today) {
            LocalDate lastDay = post.lastDay();
            return lastDay != null && lastDay.isBefore(today);
        }

        private static boolean later(PostHeld post, LocalDate today) {
            return post.firstDay().isAfter(today);
        }
    }
}
