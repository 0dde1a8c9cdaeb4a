package org.crosshead.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The people of the railway and the posts they hold. */
@Service
public class People {

    private final PersonStore store;
    private final Journal journal;
    private final CurrentActor actor;
    private final ApplicationEventPublisher events;

    People(PersonStore store, Journal journal, CurrentActor actor, ApplicationEventPublisher events) {
        this.store = store;
        this.journal = journal;
        this.actor = actor;
        this.events = events;
    }

    @Transactional(readOnly = true)
    public Optional<Person> byStaffNumber(String staffNumber) {
        return store.row(staffNumber).map(store::person);
    }

    @Transactional(readOnly = true)
    public Optional<Person> find(long id) {
        return store.find(id);
    }

    /** Returns the ids of those who hold any post on a day: who has left is none of them. */
    @Transactional(readOnly = true)
    public Set<Long> present(LocalDate day) {
        return Set.copyOf(store.holdingAny(day));
    }

    /** Returns the ids of those who hold a post on a day. */
    @Transactional(readOnly = true)
    public List<Long> holding(Post post, LocalDate day) {
        return store.holding(post, day);
    }

    /** Returns people by their staff numbers; those who are known. */
    @Transactional(readOnly = true)
    public Map<String, Person> byStaffNumbers(Set<String> staffNumbers) {
        return store.byStaffNumbers(staffNumbers).stream()
                .collect(Collectors.toMap(Person::staffNumber, Function.identity()));
    }

    /** Returns every depot from which anybody works, worked or will work, in the order of the alphabet. */
    @Transactional(readOnly = true)
    public List<String> depots() {
        return store.depots();
    }

    /** Returns everybody, by staff number. */
    @Transactional(readOnly = true)
    public List<Person> all() {
        return store.all();
    }

    /**
     * Stores a person, or changes the one of the same staff number: name and all posts are then as in the draft.
     *
     * @throws PersonRefusedException if anything in the draft is wrong
     * @throws PersonChangedException if somebody else stores the same person at the same moment
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public Person enter(PersonDraft draft) {
        List<PersonProblem> problems = PersonRules.problems(draft);
        if (!problems.isEmpty()) {
            throw new PersonRefusedException(problems);
        }
        Optional<PersonStore.Row> before = store.row(draft.staffNumber());
        refuseOwnPosts(draft, before);
        long id = before.map(row -> changed(row, draft)).orElseGet(() -> inserted(draft));
        store.replacePosts(id, draft.posts());
        String kind = before.isPresent() ? "person.changed" : "person.entered";
        journal.write(kind, "person", id, "posts: " + draft.posts().size());
        events.publishEvent(new PersonChanged(id));
        return store.find(id).orElseThrow();
    }

    /** Nobody gives posts to themselves, and only an administrator makes one. */
    private void refuseOwnPosts(PersonDraft draft, Optional<PersonStore.Row> before) {
        List<PersonDraft.PostHeld> held =
                before.flatMap(row -> store.find(row.id())).map(Person::posts).orElse(List.of());
        CurrentActor.Actor acting = actor.get();
        boolean own = before.isPresent() && Long.valueOf(before.get().id()).equals(acting.personId());
        if (own && !Set.copyOf(held).equals(Set.copyOf(draft.posts()))) {
            throw new PersonRefusedException(List.of(PersonProblem.refused("posts", "own-posts")));
        }
        boolean makesAdministrator =
                draft.posts().stream().anyMatch(post -> post.post() == Post.ADMINISTRATOR && !held.contains(post));
        boolean person = acting.accountId() != null;
        if (person && makesAdministrator && !acting.holds(Post.ADMINISTRATOR.name())) {
            throw new PersonRefusedException(List.of(PersonProblem.refused("posts", "administrator-only")));
        }
    }

    private long changed(PersonStore.Row row, PersonDraft draft) {
        if (!store.update(row, draft.name())) {
            throw new PersonChangedException();
        }
        return row.id();
    }

    private long inserted(PersonDraft draft) {
        try {
            return store.insert(draft);
        } catch (DuplicateKeyException ex) {
            throw new PersonChangedException();
        }
    }
}
