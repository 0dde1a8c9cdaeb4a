package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.jspecify.annotations.Nullable;

/** Who may enter what about whom: three acts by three people in order, and nobody about themselves but to declare or to hand back. */
final class ActRules {

    private static final Set<Kind> OWN = Set.of(Kind.DECLARED, Kind.HANDED_BACK);
    private static final Set<Kind> ASSESSMENTS =
            Set.of(Kind.QUESTIONS_PASSED, Kind.QUESTIONS_FAILED, Kind.PRACTICE_PASSED, Kind.PRACTICE_FAILED);
    private static final Set<Kind> BY_MANAGER = Set.of(
            Kind.AUTHORISED,
            Kind.DAY_ONLY,
            Kind.CHIMNEY_FIRST_ONLY,
            Kind.WITH_TEACHER_ONLY,
            Kind.LIMITS_LIFTED,
            Kind.LICENSED,
            Kind.FIT,
            Kind.FIT_RESTRICTED,
            Kind.UNFIT,
            Kind.SUSPENDED,
            Kind.REINSTATED,
            Kind.WITHDRAWN,
            Kind.TAKEN_OVER,
            Kind.RECOGNISED);
    /** Turns worked are entered by confirming a train. */
    private static final Set<Kind> BY_OFFICE = Set.of(Kind.LEARNED, Kind.RODE, Kind.BRIEFED);

    private static final Set<Kind> WITH_REASON = Set.of(
            Kind.SUSPENDED,
            Kind.WITHDRAWN,
            Kind.TAKEN_OVER,
            Kind.RECOGNISED,
            Kind.STRUCK,
            Kind.QUESTIONS_FAILED,
            Kind.PRACTICE_FAILED,
            Kind.DAY_ONLY,
            Kind.CHIMNEY_FIRST_ONLY,
            Kind.WITH_TEACHER_ONLY,
            Kind.FIT_RESTRICTED);
    private static final Set<Kind> OF_PERSON_ALONE =
            Set.of(Kind.LICENSED, Kind.FIT, Kind.FIT_RESTRICTED, Kind.UNFIT, Kind.OBSERVED, Kind.TESTED);
    /** By those who ride with drivers. */
    private static final Set<Kind> YEARLY = Set.of(Kind.OBSERVED, Kind.TESTED);

    private static final Set<Kind> OF_PERSON_TOO =
            Set.of(Kind.SUSPENDED, Kind.REINSTATED, Kind.WITHDRAWN, Kind.HANDED_BACK, Kind.STRUCK);
    private static final Set<Kind> LIMITS =
            Set.of(Kind.DAY_ONLY, Kind.CHIMNEY_FIRST_ONLY, Kind.WITH_TEACHER_ONLY, Kind.LIMITS_LIFTED);
    private static final int REASON_LEAST = 5;

    private ActRules() {}

    /** Says whether it matters for an act that nobody holds the subject yet. */
    static boolean asksWhoHolds(Kind kind) {
        return ASSESSMENTS.contains(kind);
    }

    /**
     * Somebody who acts.
     *
     * @param service whether it is a job of the service, which brings in what others have decided
     * @param personId null for a job of the service, and for a log-in that belongs to nobody
     * @param posts held today
     * @param subjectCounts whether they hold the subject themselves on the day of the act, or are recognised for it by a letter
     * @param lesson whether they tell of a learning turn that was booked under them
     */
    record Actor(boolean service, @Nullable Long personId, Set<String> posts, boolean subjectCounts, boolean lesson) {

        /** Of everything but a lesson that was booked. */
        Actor(boolean service, @Nullable Long personId, Set<String> posts, boolean subjectCounts) {
            this(service, personId, posts, subjectCounts, false);
        }

        private boolean is(String post) {
            return service || posts.contains(post);
        }
    }

    /**
     * What is known when somebody acts.
     *
     * @param today by the railway's calendar
     * @param left whether the person holds no post on the day of the act
     * @param open whether the subject can be signed: its risk assessment approved, and not closed
     * @param firstTeacher whether nobody holds the subject yet, so that only somebody recognised by a letter can be the first
     * @param holding of the person now
     * @param events of the person and subject that count
     * @param policy in force
     * @param learned how far they have come with the trips that are laid down
     * @param born of the person, for the rule by age; null where it is not said
     */
    record Known(
            LocalDate today,
            boolean left,
            boolean open,
            boolean firstTeacher,
            Holding holding,
            List<CompetenceEvent> events,
            KnowledgePolicy policy,
            Learned learned,
            @Nullable LocalDate born) {}

    /** Returns what somebody with these posts may enter about themselves, or about another; a correction aside. */
    static List<Kind> offered(boolean own, Set<String> posts) {
        return Stream.of(Kind.values())
                .filter(kind -> own ? OWN.contains(kind) : isOffered(kind, posts))
                .toList();
    }

    private static boolean isOffered(Kind kind, Set<String> posts) {
        boolean office = posts.contains("MANAGER") || posts.contains("INSPECTOR");
        return (posts.contains("ASSESSOR") && (ASSESSMENTS.contains(kind) || kind == Kind.VERIFIED))
                || (posts.contains("MANAGER") && BY_MANAGER.contains(kind))
                || (office && BY_OFFICE.contains(kind))
                || ((posts.contains("ASSESSOR") || posts.contains("INSPECTOR")) && YEARLY.contains(kind));
    }

    /** Returns why an act is refused, as a message code; empty where it may be done. */
    static Optional<String> refusal(CompetenceEvent act, Actor actor, Known known) {
        boolean own = Objects.equals(actor.personId(), act.personId());
        if (!actor.service() && actor.personId() == null) {
            return Optional.of("nobody");
        }
        if (act.day().isAfter(known.today())) {
            return Optional.of("in-the-future");
        }
        if (known.left() && act.kind() != Kind.STRUCK) {
            return Optional.of("person-left");
        }
        if (!actor.service() && OWN.contains(act.kind()) != own) {
            return Optional.of(own ? "own-record" : "only-they-themselves");
        }
        Optional<String> unfitting = subject(act).or(() -> lastDay(act, known));
        if (unfitting.isPresent()) {
            return unfitting;
        }
        if (WITH_REASON.contains(act.kind()) && act.note().strip().length() < REASON_LEAST) {
            return Optional.of("reason-missing");
        }
        boolean twice = act.kind() != Kind.STRUCK
                && known.events().stream()
                        .anyMatch(event -> event.kind() == act.kind()
                                && event.day().equals(act.day())
                                && event.subject().equals(act.subject()));
        if (twice) {
            return Optional.of("entered-already");
        }
        if (ASSESSMENTS.contains(act.kind())) {
            return assessment(actor, known);
        }
        if (BY_MANAGER.contains(act.kind())) {
            return byManager(act, actor, known);
        }
        return switch (act.kind()) {
            case DECLARED -> declaration(known);
            case OBSERVED, TESTED ->
                actor.is("ASSESSOR") || actor.is("INSPECTOR") ? Optional.empty() : Optional.of("observer-only");
            case LEARNED, RODE -> lesson(act, actor);
            case BRIEFED -> act.subject().kind() == Subject.Kind.CLASS ? byOffice(actor) : Optional.of("other-subject");
            case VERIFIED -> verification(actor, known);
            case STRUCK -> struck(act, actor, known);
            case HANDED_BACK -> Optional.empty();
            case CARRIED_OVER, PROVED -> Optional.of("not-offered");
            default -> byOffice(actor);
        };
    }

    /** A licence or a medical outcome is of the person alone, everything else of a road or a class. */
    private static Optional<String> subject(CompetenceEvent act) {
        boolean alone = act.subject().kind() == Subject.Kind.PERSON;
        boolean fits = OF_PERSON_ALONE.contains(act.kind())
                ? act.subject().equals(ofPerson(act.kind()))
                : !alone || OF_PERSON_TOO.contains(act.kind());
        return fits ? Optional.empty() : Optional.of("other-subject");
    }

    private static Subject ofPerson(Kind kind) {
        return switch (kind) {
            case LICENSED -> Subject.LICENCE;
            case OBSERVED -> Subject.OBSERVED;
            case TESTED -> Subject.TESTED;
            default -> Subject.MEDICAL;
        };
    }

    private static Optional<String> lastDay(CompetenceEvent act, Known known) {
        boolean asked = act.kind() == Kind.RECOGNISED
                || (OF_PERSON_ALONE.contains(act.kind()) && act.kind() != Kind.UNFIT && !YEARLY.contains(act.kind()));
        LocalDate until = act.until();
        if (!asked) {
            return until == null ? Optional.empty() : Optional.of("no-last-day");
        }
        if (until == null || !until.isAfter(act.day())) {
            return Optional.of("last-day");
        }
        LocalDate most = act.kind() == Kind.RECOGNISED
                ? act.day().plusMonths(known.policy().assessmentMonths())
                : act.kind() == Kind.LICENSED
                        ? act.day().plusMonths(known.policy().regime().licenceMonthsMost())
                        : PersonalRules.medicalLast(act.day(), known.born());
        return until.isAfter(most) ? Optional.of("last-day-too-late") : Optional.empty();
    }

    private static Optional<String> assessment(Actor actor, Known known) {
        if (!actor.is("ASSESSOR")) {
            return Optional.of("assessor-only");
        }
        if (!known.open()) {
            return Optional.of("not-open");
        }
        State state = known.holding().state();
        boolean ready = state == State.DECLARED || state == State.HELD || state == State.DUE;
        if (!ready) {
            return Optional.of("not-declared");
        }
        if (!actor.subjectCounts()) {
            return Optional.of(known.firstTeacher() ? "letter-missing" : "assessor-not-current");
        }
        return isOnlyTeacher(actor.personId(), known.events())
                        && !known.policy().verifies()
                ? Optional.of("assessor-taught")
                : Optional.empty();
    }

    private static Optional<String> declaration(Known known) {
        if (!known.open()) {
            return Optional.of("not-open");
        }
        return known.holding().counts() || known.learned().isEnough() ? Optional.empty() : Optional.of("trips-missing");
    }

    /** A teacher who does not hold it that day has taught nothing. */
    private static Optional<String> lesson(CompetenceEvent act, Actor actor) {
        if (!actor.lesson()) {
            return byOffice(actor);
        }
        boolean own = Objects.equals(act.otherId(), actor.personId());
        return own && actor.subjectCounts() ? Optional.empty() : Optional.of("teacher-not-current");
    }

    /** Turns and lessons are entered by those who know what was run. */
    private static Optional<String> byOffice(Actor actor) {
        boolean may = actor.is("MANAGER") || actor.is("INSPECTOR");
        return may ? Optional.empty() : Optional.of("office-only");
    }

    private static Optional<String> verification(Actor actor, Known known) {
        if (!actor.is("ASSESSOR")) {
            return Optional.of("assessor-only");
        }
        boolean assessed = known.events().stream()
                .anyMatch(event ->
                        ASSESSMENTS.contains(event.kind()) && Objects.equals(event.otherId(), actor.personId()));
        return assessed ? Optional.of("second-assessor") : Optional.empty();
    }

    private static Optional<String> byManager(CompetenceEvent act, Actor actor, Known known) {
        if (!actor.is("MANAGER")) {
            return Optional.of("manager-only");
        }
        if (LIMITS.contains(act.kind())) {
            return known.holding().counts() ? Optional.empty() : Optional.of("not-held");
        }
        if (act.kind() != Kind.AUTHORISED) {
            return Optional.empty();
        }
        if (!known.open()) {
            return Optional.of("not-open");
        }
        if (known.holding().state() != State.ASSESSED) {
            return Optional.of("not-assessed");
        }
        LocalDate assessedOn = known.holding().assessed();
        if (assessedOn != null
                && act.day().isAfter(assessedOn.plusMonths(known.policy().assessmentMonths()))) {
            return Optional.of("assessment-too-old");
        }
        boolean assessed = known.events().stream()
                .anyMatch(event ->
                        ASSESSMENTS.contains(event.kind()) && Objects.equals(event.otherId(), actor.personId()));
        if (assessed) {
            return Optional.of("three-people");
        }
        boolean verified = known.events().stream().anyMatch(event -> event.kind() == Kind.VERIFIED);
        boolean taughtAndAssessed = known.events().stream()
                .filter(event -> ASSESSMENTS.contains(event.kind()))
                .anyMatch(event -> isOnlyTeacher(event.otherId(), known.events()));
        return taughtAndAssessed && !verified ? Optional.of("not-verified") : Optional.empty();
    }

    private static Optional<String> struck(CompetenceEvent act, Actor actor, Known known) {
        boolean may = actor.is("MANAGER") || actor.is("ASSESSOR");
        if (!may) {
            return Optional.of("manager-only");
        }
        boolean there = known.events().stream().anyMatch(event -> Objects.equals(event.id(), act.struckId()));
        return there ? Optional.empty() : Optional.of("nothing-to-strike");
    }

    /** Says whether all teaching of a person was by one. */
    private static boolean isOnlyTeacher(@Nullable Long teacherId, List<CompetenceEvent> events) {
        List<CompetenceEvent> lessons =
                events.stream().filter(event -> event.kind() == Kind.LEARNED).toList();
        return teacherId != null
                && !lessons.isEmpty()
                && lessons.stream().allMatch(event -> teacherId.equals(event.otherId()));
    }
}
