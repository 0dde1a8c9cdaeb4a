package org.crosshead.competence;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What people know: enters what bears on it, and says of one person and subject what follows; {@link Holdings} says it of many. */
@Service
public class Knowledge {

    private static final int NOTE_MOST = 500;

    private final EventStore store;
    private final StandingStore standings;
    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final LaidDown laidDown;
    private final People people;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;
    private final ZoneId zone;
    private final ApplicationEventPublisher events;

    Knowledge(
            EventStore store,
            StandingStore standings,
            Holdings holdings,
            KnowledgePolicies policies,
            LaidDown laidDown,
            People people,
            Journal journal,
            CurrentActor actor,
            Clock clock,
            ZoneId zone,
            ApplicationEventPublisher events) {
        this.events = events;
        this.store = store;
        this.standings = standings;
        this.holdings = holdings;
        this.policies = policies;
        this.laidDown = laidDown;
        this.people = people;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * Something to be entered.
     *
     * @param otherId teacher, or the assessor of a paper record; null to name whoever enters it
     * @param struckId the event that a correction strikes
     * @param until last good day of a licence or medical outcome; null for all others
     * @param circumstances in which a lesson was; empty for all others
     * @param born for the rule by age of a medical outcome, and kept nowhere; null where it is not said
     */
    public record Entry(
            long personId,
            Kind kind,
            Subject subject,
            LocalDate day,
            @Nullable Long otherId,
            @Nullable Long struckId,
            @Nullable LocalDate until,
            @Nullable LocalDate born,
            String note,
            Set<Circumstance> circumstances) {

        public Entry {
            circumstances = Set.copyOf(circumstances);
        }

        /** Of everything but lessons. */
        public Entry(
                long personId,
                Kind kind,
                Subject subject,
                LocalDate day,
                @Nullable Long otherId,
                @Nullable Long struckId,
                @Nullable LocalDate until,
                @Nullable LocalDate born,
                String note) {
            this(personId, kind, subject, day, otherId, struckId, until, born, note, Set.of());
        }

        /** Of everything that has no last day of its own. */
        public Entry(
                long personId,
                Kind kind,
                Subject subject,
                LocalDate day,
                @Nullable Long otherId,
                @Nullable Long struckId,
                String note) {
            this(personId, kind, subject, day, otherId, struckId, null, null, note);
        }
    }

    /**
     * Enters something.
     *
     * @return the id of the event
     * @throws ActRefusedException if whoever acts may not, or it cannot be
     */
    @Transactional
    public long enter(Entry entry) {
        return enter(entry, false);
    }

    /**
     * Enters a learning turn that was booked under whoever acts.
     *
     * @throws ActRefusedException if whoever acts does not hold the subject on its day, or it cannot be
     */
    @Transactional
    public long enterLesson(Entry entry) {
        return enter(entry, true);
    }

    private long enter(Entry entry, boolean lesson) {
        store.lock(entry.personId());
        if (entry.note().length() > NOTE_MOST) {
            throw new ActRefusedException("too-long");
        }
        CurrentActor.Actor acting = actor.get();
        CompetenceEvent event = new CompetenceEvent(
                0,
                entry.personId(),
                entry.kind(),
                entry.subject(),
                entry.day(),
                clock.instant(),
                entry.otherId() == null ? acting.personId() : entry.otherId(),
                entry.struckId(),
                entry.until(),
                entry.note().strip(),
                entry.circumstances());
        ActRules.refusal(event, actingOn(event, acting, lesson), known(event, entry.born()))
                .ifPresent(code -> {
                    throw new ActRefusedException(code);
                });
        long id = store.insert(event, acting.name());
        derive(event.personId(), event.subject());
        journal.write(
                "competence."
                        + event.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                "person",
                event.personId(),
                event.subject().code());
        events.publishEvent(new KnowledgeChanged(event.personId()));
        return id;
    }

    /** Returns what whoever acts may enter about a person; a correction aside. */
    public List<Kind> offered(long personId) {
        CurrentActor.Actor acting = actor.get();
        return ActRules.offered(Long.valueOf(personId).equals(acting.personId()), acting.posts());
    }

    /** Enters something unless it is there already; returns whether it was entered. Whoever acts may not enter their own turn. */
    @Transactional
    public boolean enteredAnew(Entry entry) {
        try {
            enter(entry);
            return true;
        } catch (ActRefusedException ex) {
            if (ex.code().equals("entered-already")) {
                return false;
            }
            throw ex;
        }
    }

    private ActRules.Actor actingOn(CompetenceEvent event, CurrentActor.Actor acting, boolean lesson) {
        Long personId = acting.personId();
        boolean counts = personId != null && mayTeach(personId, event.subject(), event.day());
        return new ActRules.Actor(acting.accountId() == null, personId, acting.posts(), counts, lesson);
    }

    private ActRules.Known known(CompetenceEvent event, @Nullable LocalDate born) {
        Person person = people.find(event.personId())
                .orElseThrow(() -> new NotFoundException("person", String.valueOf(event.personId())));
        boolean left = Stream.of(Post.values()).noneMatch(post -> person.holds(post, event.day()));
        boolean open = laidDown.isOpen(event.subject(), event.day());
        LocalDate today = LocalDate.now(clock.withZone(zone));
        boolean first = ActRules.asksWhoHolds(event.kind()) && !holdings.anybodyHolds(event.subject(), event.day());
        List<CompetenceEvent> events = unstruck(store.of(event.personId(), event.subject()));
        return new ActRules.Known(
                today,
                left,
                open,
                first,
                holding(event.personId(), event.subject(), event.day(), clock.instant()),
                events,
                policies.on(today),
                learned(events, event.subject(), event.day()),
                born);
    }

    /** Says whether somebody may teach and assess a subject on a day: they hold it, or are recognised for it by a letter. */
    public boolean mayTeach(long personId, Subject subject, LocalDate day) {
        return holding(personId, subject, day, clock.instant()).counts() || isRecognised(personId, subject, day);
    }

    /** Says whether somebody is recognised by a letter to teach and assess a subject on a day. */
    public boolean isRecognised(long personId, Subject subject, LocalDate day) {
        return unstruck(store.of(personId, subject)).stream()
                .filter(event -> event.kind() == Kind.RECOGNISED && !event.day().isAfter(day))
                .map(CompetenceEvent::until)
                .anyMatch(until -> until != null && !day.isAfter(until));
    }

    /** Returns how far somebody has come with the trips that are laid down for a subject. */
    public Learned learned(long personId, Subject subject, LocalDate day) {
        return learned(unstruck(store.of(personId, subject)), subject, day);
    }

    private Learned learned(List<CompetenceEvent> events, Subject subject, LocalDate day) {
        KnowledgePolicy policy = policies.on(day);
        return Learned.of(
                events,
                laidDown.needs(subject),
                laidDown.terms(subject, policy).lapseMonths(),
                policy.upkeep().anewMonths(),
                day);
    }

    private static List<CompetenceEvent> unstruck(List<CompetenceEvent> events) {
        List<Long> struck = events.stream()
                .map(CompetenceEvent::struckId)
                .filter(java.util.Objects::nonNull)
                .toList();
        return events.stream()
                .filter(event -> event.kind() != Kind.STRUCK && !struck.contains(event.id()))
                .toList();
    }

    /** Returns what a person holds of a subject on a day, as known at a moment. */
    public Holding holding(long personId, Subject subject, LocalDate day, Instant knownAt) {
        return HoldingRules.on(store.of(personId, subject), laidDown.terms(subject, policies.on(day)), day, knownAt);
    }

    /** Returns the latest that was entered about a person, the latest first. */
    public List<CompetenceEvent> latestEvents(long personId, int most) {
        return store.latestOf(personId, most);
    }

    /** Returns everything entered about a person, the latest first. */
    public List<CompetenceEvent> events(long personId) {
        return store.of(personId).stream()
                .sorted(Comparator.comparing(CompetenceEvent::id).reversed())
                .toList();
    }

    public Optional<CompetenceEvent> event(long id) {
        return store.find(id);
    }

    private void derive(long personId, Subject subject) {
        HoldingRules.Terms terms = laidDown.terms(subject, policies.on(LocalDate.now(clock.withZone(zone))));
        standings.put(
                personId, new StandingStore.Derived(terms, HoldingRules.standing(store.of(personId, subject), terms)));
    }

    /** Carries what somebody holds over to another subject, with its dates and limits; only by those who split and merge sections. */
    void carryOver(long personId, Subject subject, Standing from, String note) {
        LocalDate since = from.since();
        if (from.state() != Holding.State.HELD || since == null) {
            return;
        }
        store.lock(personId);
        LocalDate worked = from.worked();
        LocalDate base = worked != null && worked.isAfter(since) ? worked : since;
        LocalDate assessed = from.assessed() == null ? since : from.assessed();
        carried(personId, Kind.CARRIED_OVER, subject, base, assessed, note);
        from.limits().forEach(limit -> carried(personId, Kind.valueOf(limit.name()), subject, base, null, note));
        if (from.suspended()) {
            carried(personId, Kind.SUSPENDED, subject, base, null, note);
        }
        derive(personId, subject);
    }

    /** Notes who drove the run by which a closed road was proved; only by whoever opens it again. */
    void proved(long personId, Subject subject, LocalDate day, String note) {
        store.lock(personId);
        String shortened = note.substring(0, Math.min(note.length(), NOTE_MOST));
        carried(personId, Kind.PROVED, subject, day, null, shortened);
        derive(personId, subject);
        events.publishEvent(new KnowledgeChanged(personId));
    }

    private void carried(
            long personId, Kind kind, Subject subject, LocalDate day, @Nullable LocalDate until, String note) {
        CurrentActor.Actor acting = actor.get();
        store.insert(
                new CompetenceEvent(
                        0, personId, kind, subject, day, clock.instant(), acting.personId(), null, until, note),
                acting.name());
    }

    /** Derives anew from the events all that a person holds; nobody enters anything about them meanwhile. */
    @Transactional
    public void derive(long personId) {
        store.lock(personId);
        KnowledgePolicy policy = policies.on(LocalDate.now(clock.withZone(zone)));
        LaidDown.Book known = laidDown.book();
        List<StandingStore.Derived> derived = new ArrayList<>();
        store.toDerive(personId).stream()
                .collect(Collectors.groupingBy(CompetenceEvent::subject))
                .forEach((subject, events) -> {
                    HoldingRules.Terms terms = known.terms(subject, policy);
                    derived.add(new StandingStore.Derived(terms, HoldingRules.standing(events, terms)));
                });
        standings.replace(personId, derived);
    }

    /** Derives anew what a person holds of one subject. */
    @Transactional
    public void deriveAgain(long personId, Subject subject) {
        store.lock(personId);
        derive(personId, subject);
    }
}
