package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionDraft;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Splits and merges sections. What people hold is carried over with its dates; of two that are merged only who holds both holds the new
 * one, and the older dates rule. The old sections are closed, the new ones are approved by a second person as any other.
 */
@Service
public class SectionSurgery {

    private final RouteSections sections;
    private final Knowledge knowledge;
    private final Holdings holdings;
    private final Clock clock;
    private final ZoneId zone;

    SectionSurgery(RouteSections sections, Knowledge knowledge, Holdings holdings, Clock clock, ZoneId zone) {
        this.sections = sections;
        this.knowledge = knowledge;
        this.holdings = holdings;
        this.clock = clock;
        this.zone = zone;
    }

    /** Code and title of a section to be. */
    public record Named(String code, String title) {}

    /**
     * Splits a section in two at a place.
     *
     * @param lower the one of the lower measures
     * @throws SectionRefusedException if the place does not lie within, a code is taken, or the section is closed
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void split(String code, double atMeasure, Named lower, Named upper) {
        RouteSection old = open(code);
        if (atMeasure <= old.fromMeasure() || atMeasure >= old.toMeasure()) {
            throw new SectionRefusedException("split-place");
        }
        free(lower.code());
        free(upper.code());
        sections.enter(draft(old, lower, old.fromMeasure(), atMeasure));
        sections.enter(draft(old, upper, atMeasure, old.toMeasure()));
        String note = "carried over from " + code;
        holdings.standings(subject(code)).forEach((person, standing) -> {
            knowledge.carryOver(person, subject(lower.code()), standing, note);
            knowledge.carryOver(person, subject(upper.code()), standing, note);
        });
        sections.replaced(code, today());
    }

    /**
     * Merges two sections that touch into one.
     *
     * @throws SectionRefusedException if they do not touch on one route in one direction, the code is taken, or one is closed
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void merge(String code, String otherCode, Named whole) {
        RouteSection one = open(code);
        RouteSection other = open(otherCode);
        boolean touch = one.routeCode().equals(other.routeCode())
                && one.direction() == other.direction()
                && one.line().equals(other.line())
                && (one.toMeasure() == other.fromMeasure() || other.toMeasure() == one.fromMeasure());
        if (!touch) {
            throw new SectionRefusedException("merge-apart");
        }
        free(whole.code());
        RouteSection harder = one.band().compareTo(other.band()) <= 0 ? one : other;
        sections.enter(new SectionDraft(
                whole.code(),
                whole.title(),
                one.routeCode(),
                Math.min(one.fromMeasure(), other.fromMeasure()),
                Math.max(one.toMeasure(), other.toMeasure()),
                one.direction(),
                harder.band(),
                one.hard() + " " + other.hard(),
                sections.teacherNumber(one),
                one.line(),
                one.needs().or(other.needs())));
        Map<Long, Standing> others = holdings.standings(subject(otherCode));
        String note = "carried over from " + code + " and " + otherCode;
        holdings.standings(subject(code)).forEach((person, standing) -> {
            Standing second = others.get(person);
            if (second != null && second.state() == standing.state()) {
                knowledge.carryOver(person, subject(whole.code()), older(standing, second), note);
            }
        });
        sections.replaced(code, today());
        sections.replaced(otherCode, today());
    }

    /** Returns the standing of which every date is the older one, and every limit holds. */
    static Standing older(Standing one, Standing other) {
        Set<Holding.Limit> limits = new HashSet<>(one.limits());
        limits.addAll(other.limits());
        LocalDate base = earlier(base(one), base(other));
        return new Standing(
                one.state(),
                one.suspended() || other.suspended(),
                base,
                base,
                earlier(
                        one.assessed() == null ? one.since() : one.assessed(),
                        other.assessed() == null ? other.since() : other.assessed()),
                null,
                limits,
                earlier(one.taught(), other.taught()),
                earlier(one.lastDay(), other.lastDay()));
    }

    /** The day from which it lapses. */
    private static @Nullable LocalDate base(Standing standing) {
        LocalDate since = standing.since();
        LocalDate worked = standing.worked();
        return since != null && worked != null && worked.isAfter(since) ? worked : since;
    }

    private static @Nullable LocalDate earlier(@Nullable LocalDate one, @Nullable LocalDate other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.isBefore(other) ? one : other;
    }

    private SectionDraft draft(RouteSection old, Named named, double fromMeasure, double toMeasure) {
        return new SectionDraft(
                named.code(),
                named.title(),
                old.routeCode(),
                fromMeasure,
                toMeasure,
                old.direction(),
                old.band(),
                old.hard(),
                sections.teacherNumber(old),
                old.line(),
                old.needs());
    }

    private RouteSection open(String code) {
        RouteSection section = sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
        if (section.closedFrom() != null) {
            throw new SectionRefusedException("split-closed");
        }
        return section;
    }

    private void free(String code) {
        if (sections.find(code).isPresent()) {
            throw new SectionRefusedException("code-taken");
        }
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    private static Subject subject(String code) {
        return new Subject(Subject.Kind.SECTION, code);
    }
}
