package org.crosshead.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.platform.CurrentActor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the service of people promises on every database. People here are invented. */
abstract class PeopleContract {

    private static final LocalDate MAY = LocalDate.of(2030, 5, 1);

    private final List<String> journal = new ArrayList<>();
    private People people;

    private DataSource database;

    /** A database with all tables and nothing in them, anew at each call. */
    abstract DataSource dataSource();

    @BeforeEach
    void migrate() {
        database = dataSource();
        people = new People(
                new PersonStore(JdbcClient.create(database)),
                (kind, subjectType, id, summary) -> journal.add(kind + " " + subjectType + " " + summary),
                () -> new CurrentActor.Actor("test"),
                event -> {});
    }

    @Test
    void keepsAPersonWithTheirPosts() {
        Person stored = people.enter(ida());

        assertThat(stored.staffNumber()).isEqualTo("T-1");
        assertThat(stored.name()).isEqualTo("Ida Testwell");
        assertThat(stored.posts()).containsExactlyInAnyOrderElementsOf(ida().posts());
        assertThat(people.find(stored.id())).contains(stored);
        assertThat(people.byStaffNumber("T-1")).contains(stored);
        assertThat(people.byStaffNumber("T-2")).isEmpty();
        assertThat(people.depots()).containsExactly("Fernbeck");
        assertThat(journal).containsExactly("person.entered person posts: 2");
    }

    @Test
    void changesThePersonOfTheSameStaffNumber() {
        Person first = people.enter(ida());

        Person second = people.enter(new PersonDraft("T-1", "Ida Renamed", List.of()));

        assertThat(second.id()).isEqualTo(first.id());
        assertThat(second.name()).isEqualTo("Ida Renamed");
        assertThat(second.posts()).isEmpty();
        assertThat(people.all()).containsExactly(second);
        assertThat(journal).hasSize(2);
    }

    @Test
    void listsEverybodyByStaffNumber() {
        people.enter(new PersonDraft("T-3", "Third Testwell", List.of()));
        people.enter(ida());

        assertThat(people.all()).extracting(Person::staffNumber).containsExactly("T-1", "T-3");
        assertThat(people.all().get(0).posts()).hasSize(2);
        assertThat(people.all().get(1).posts()).isEmpty();
    }

    @Test
    void storesNothingOfARefusedPerson() {
        PersonDraft wrong = new PersonDraft("", " ", List.of());

        assertThatThrownBy(() -> people.enter(wrong)).isInstanceOf(PersonRefusedException.class);

        assertThat(people.all()).isEmpty();
        assertThat(journal).isEmpty();
    }

    @Test
    void theTablesThemselvesRefuseAPostThatEndsBeforeItBegins() {
        Person stored = people.enter(ida());

        assertThatThrownBy(() -> JdbcClient.create(database)
                        .sql("update person_post set last_day = date '2000-01-01' where person_id = ?")
                        .param(stored.id())
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    private static PersonDraft ida() {
        return new PersonDraft(
                "T-1",
                "Ida Testwell",
                List.of(
                        new PostHeld(Post.DRIVER, "Fernbeck", MAY, null),
                        new PostHeld(Post.FIREMAN, MAY.minusYears(5), MAY)));
    }
}
