package org.crosshead.briefing.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.crosshead.competence.Decision;
import org.crosshead.competence.Decisions;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.Permit;
import org.crosshead.competence.Subject;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What each of a train's crew signs, as it was decided last, for the crew to read on their briefing. */
@Component
class WhoKnows {

    private final Decisions decisions;
    private final RouteSections sections;
    private final KnowledgePolicies policies;
    private final People people;

    WhoKnows(Decisions decisions, RouteSections sections, KnowledgePolicies policies, People people) {
        this.decisions = decisions;
        this.sections = sections;
        this.policies = policies;
        this.people = people;
    }

    /**
     * The decision in the crew's words.
     *
     * @param rows one for each person and subject, in running order
     */
    record Shown(Decision decision, List<Row> rows, List<Barred> barred) {}

    /** What stands in somebody's way besides road and engine. */
    record Barred(String name, String code, List<Double> figures) {}

    /**
     * One person and one subject.
     *
     * @param subject title of the section, or name of what is signed
     * @param helpers who goes along as conductor driver or teacher
     * @param hard what makes the section hard, where the person does not simply hold it or has not worked it for long; null elsewhere
     */
    record Row(
            String name,
            String subject,
            Permit.Line line,
            List<String> helpers,
            boolean notLately,
            @Nullable String hard) {}

    Optional<Shown> of(long trainId) {
        return decisions.latest(trainId).map(this::shown);
    }

    private Shown shown(Decision decision) {
        Map<Long, String> names = people.all().stream().collect(Collectors.toMap(Person::id, Person::name));
        Map<String, RouteSection> known =
                sections.all().stream().collect(Collectors.toMap(RouteSection::code, Function.identity()));
        Permit permit = decision.permit();
        int days = policies.on(permit.day()).warnDays();
        return new Shown(
                decision,
                permit.lines().stream()
                        .filter(line -> !isPersonal(line))
                        .map(line -> row(line, permit.day().minusDays(days), names, known))
                        .toList(),
                Stream.concat(
                                permit.bars().stream()
                                        .map(bar -> new Barred(name(names, bar.personId()), bar.code(), bar.figures())),
                                permit.lines().stream()
                                        .filter(line -> isPersonal(line) && line.answer() != Permit.Answer.ALLOWED)
                                        .map(line -> new Barred(
                                                name(names, line.personId()), "personal", List.of(0.0, 0.0))))
                        .distinct()
                        .toList());
    }

    /** Licences and medical outcomes are nobody's business on a briefing but that something is missing. */
    private static boolean isPersonal(Permit.Line line) {
        return line.holding().subject().kind() == Subject.Kind.PERSON;
    }

    private static Row row(
            Permit.Line line, LocalDate longBefore, Map<Long, String> names, Map<String, RouteSection> known) {
        Subject subject = line.holding().subject();
        RouteSection section = subject.kind() == Subject.Kind.SECTION ? known.get(subject.code()) : null;
        LocalDate worked = line.holding().lastWorked();
        boolean notLately = section != null && (worked == null || worked.isBefore(longBefore));
        boolean fuller = section != null && (notLately || line.answer() != Permit.Answer.ALLOWED);
        boolean along = line.answer() == Permit.Answer.CONDUCTED || line.answer() == Permit.Answer.INSTRUCTED;
        return new Row(
                name(names, line.personId()),
                section == null ? subject.code() : section.title(),
                line,
                along ? line.conductors().stream().map(id -> name(names, id)).toList() : List.of(),
                notLately,
                fuller && section != null ? section.hard() : null);
    }

    private static String name(Map<Long, String> names, long id) {
        return names.getOrDefault(id, "\u2013");
    }
}
