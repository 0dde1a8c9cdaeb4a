package org.crosshead.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused of a person, and on which days a post is held. */
class PersonRulesTests {

    private static final LocalDate DAY = LocalDate.of(2030, 5, 6);

    @ParameterizedTest
    @ValueSource(strings = {"", "new", "D 01", "-01", "D/01", "D-0123456789012345678", "<b>1"})
    void refusesAStaffNumberThatCannotStandInAnAddress(String staffNumber) {
        assertThat(codes(new PersonDraft(staffNumber, "Ida Testwell", List.of())))
                .containsExactly("staffNumber crew.refused.staff-number");
    }

    @Test
    void refusesAMissingAndATooLongName() {
        assertThat(codes(new PersonDraft("T-1", " ", List.of()))).containsExactly("name crew.refused.name-needed");
        assertThat(codes(new PersonDraft("T-1", "x".repeat(101), List.of())))
                .containsExactly("name crew.refused.too-long");
        assertThat(codes(new PersonDraft("T-1", "x".repeat(100), List.of()))).isEmpty();
    }

    @Test
    void refusesAPostThatEndsBeforeItBegins() {
        assertThat(codes(with(new PostHeld(Post.DRIVER, DAY, DAY.minusDays(1)))))
                .containsExactly("posts[0].lastDay crew.refused.last-before-first");
        assertThat(codes(with(new PostHeld(Post.DRIVER, DAY, DAY)))).isEmpty();
    }

    @Test
    void refusesDaysFarAway() {
        assertThat(codes(with(new PostHeld(Post.DRIVER, LocalDate.of(1899, 12, 31), null))))
                .containsExactly("posts[0].firstDay crew.refused.day-outside");
        assertThat(codes(with(new PostHeld(Post.DRIVER, DAY, LocalDate.of(2200, 1, 1)))))
                .containsExactly("posts[0].lastDay crew.refused.day-outside");
    }

    @Test
    void refusesTheSamePostTwiceAtOneTime() {
        assertThat(codes(with(
                        new PostHeld(Post.DRIVER, DAY, DAY.plusDays(10)),
                        new PostHeld(Post.DRIVER, DAY.plusDays(10), null))))
                .containsExactly("posts[1].firstDay crew.refused.post-twice");
        assertThat(codes(with(
                        new PostHeld(Post.DRIVER, DAY, DAY.plusDays(10)),
                        new PostHeld(Post.DRIVER, DAY.plusDays(11), null),
                        new PostHeld(Post.FIREMAN, DAY, null))))
                .isEmpty();
    }

    @Test
    void holdsAPostOnItsFirstAndOnItsLastDay() {
        Person person = new Person(1, "T-1", "Ida Testwell", List.of(new PostHeld(Post.DRIVER, DAY, DAY.plusDays(2))));

        assertThat(person.holds(Post.DRIVER, DAY)).isTrue();
        assertThat(person.holds(Post.DRIVER, DAY.plusDays(2))).isTrue();
        assertThat(person.holds(Post.DRIVER, DAY.minusDays(1))).isFalse();
        assertThat(person.holds(Post.DRIVER, DAY.plusDays(3))).isFalse();
        assertThat(person.holds(Post.FIREMAN, DAY)).isFalse();
    }

    @Test
    void refusesADepotWithoutAName() {
        assertThat(codes(with(new PostHeld(Post.DRIVER, " ", DAY, null))))
                .containsExactly("posts[0].depot crew.refused.depot-blank");
        assertThat(codes(with(new PostHeld(Post.DRIVER, "x".repeat(61), DAY, null))))
                .containsExactly("posts[0].depot crew.refused.too-long");
        assertThat(codes(with(new PostHeld(Post.DRIVER, "x".repeat(60), DAY, null))))
                .isEmpty();
    }

    /** Who moves to another depot is of the first to the last day there; who has left is of none. */
    @Test
    void belongsToADepotFromDayToDay() {
        Person person = new Person(
                1,
                "T-1",
                "Ida Testwell",
                List.of(
                        new PostHeld(Post.DRIVER, "Fernbeck", DAY, DAY.plusDays(9)),
                        new PostHeld(Post.DRIVER, "Highmoor", DAY.plusDays(10), DAY.plusDays(20)),
                        new PostHeld(Post.ASSESSOR, "Fernbeck", DAY, DAY.plusDays(5))));

        assertThat(new Group(Post.DRIVER, "Fernbeck").includes(person, DAY.plusDays(9)))
                .isTrue();
        assertThat(new Group(Post.DRIVER, "Fernbeck").includes(person, DAY.plusDays(10)))
                .isFalse();
        assertThat(new Group(Post.DRIVER, "Highmoor").includes(person, DAY.plusDays(10)))
                .isTrue();
        assertThat(new Group(Post.ASSESSOR, "Fernbeck").includes(person, DAY.plusDays(6)))
                .isFalse();
        assertThat(new Group(null, "Fernbeck").includes(person, DAY.plusDays(6)))
                .isTrue();
        assertThat(Group.EVERYBODY.includes(person, DAY.plusDays(20))).isTrue();
        assertThat(Group.EVERYBODY.includes(person, DAY.plusDays(21)))
                .as("who has left")
                .isFalse();
        assertThat(person.depots(DAY)).containsExactly("Fernbeck");
        assertThat(person.depots(DAY.plusDays(21))).isEmpty();
    }

    private static PersonDraft with(PostHeld... posts) {
        return new PersonDraft("T-1", "Ida Testwell", List.of(posts));
    }

    private static List<String> codes(PersonDraft draft) {
        return PersonRules.problems(draft).stream()
                .map(problem -> problem.field() + " " + problem.code())
                .toList();
    }
}
