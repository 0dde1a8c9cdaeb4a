package org.crosshead.competence;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.routeknowledge.Closure;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What is laid down of roads and classes, as it bears on who knows them: whether they can be signed, what a learner needs, what ends it. */
@Component
public class LaidDown {

    private final RouteSections sections;
    private final ClassGuideStore guides;

    LaidDown(RouteSections sections, ClassGuideStore guides) {
        this.sections = sections;
        this.guides = guides;
    }

    /** Says whether a subject can be signed on a day: it is laid down and approved, and not closed; a class without a guide can. */
    public boolean isOpen(Subject subject, LocalDate day) {
        return switch (subject.kind()) {
            case SECTION ->
                sections.find(subject.code())
                        .map(section -> section.isOpen(day))
                        .orElse(false);
            case CLASS ->
                guides.find(subject.code())
                        .map(guide -> guide.approvedBy() != null)
                        .orElse(true);
            case PERSON -> true;
        };
    }

    /** Returns what a learner of a subject needs at least. */
    public LearningNeeds needs(Subject subject) {
        return switch (subject.kind()) {
            case SECTION ->
                sections.find(subject.code()).map(RouteSection::needs).orElse(LearningNeeds.NONE);
            case CLASS -> guides.find(subject.code()).map(ClassGuide::needs).orElse(LearningNeeds.NONE);
            case PERSON -> LearningNeeds.NONE;
        };
    }

    HoldingRules.Terms terms(Subject subject, KnowledgePolicy policy) {
        return switch (subject.kind()) {
            case SECTION -> road(subject, policy, sections.find(subject.code()).orElse(null));
            case CLASS -> other(subject, policy, guides.find(subject.code()).orElse(null));
            case PERSON -> other(subject, policy, null);
        };
    }

    /** Returns all that is laid down now, read once. */
    Book book() {
        return new Book(
                sections.all().stream().collect(Collectors.toMap(RouteSection::code, Function.identity())),
                guides.all().stream().collect(Collectors.toMap(ClassGuide::classCode, Function.identity())));
    }

    /** Returns what is laid down now of some subjects, read once. */
    Book book(List<Subject> subjects) {
        Set<String> codes = subjects.stream()
                .filter(subject -> subject.kind() == Subject.Kind.SECTION)
                .map(Subject::code)
                .collect(Collectors.toSet());
        return new Book(
                sections.ofCodes(codes).stream().collect(Collectors.toMap(RouteSection::code, Function.identity())),
                guides.all().stream().collect(Collectors.toMap(ClassGuide::classCode, Function.identity())));
    }

    /** Sections and class guides by their codes. */
    record Book(Map<String, RouteSection> sections, Map<String, ClassGuide> guides) {

        HoldingRules.Terms terms(Subject subject, KnowledgePolicy policy) {
            return subject.kind() == Subject.Kind.SECTION
                    ? road(subject, policy, sections.get(subject.code()))
                    : other(subject, policy, subject.kind() == Subject.Kind.CLASS ? guides.get(subject.code()) : null);
        }
    }

    /** A section that is no longer laid down counts as closed. */
    private static HoldingRules.Terms road(Subject subject, KnowledgePolicy policy, @Nullable RouteSection section) {
        return section == null
                ? new HoldingRules.Terms(subject, 1, List.of(new Closure(LocalDate.MIN)), policy)
                : new HoldingRules.Terms(subject, policy.lapseMonths(section.band()), section.closures(), policy);
    }

    private static HoldingRules.Terms other(Subject subject, KnowledgePolicy policy, @Nullable ClassGuide guide) {
        return new HoldingRules.Terms(
                subject, policy.classLapseMonths(), guide == null ? List.of() : guide.closures(), policy);
    }
}
