package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.platform.NotFoundException;
import org.crosshead.routeknowledge.Closure;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Opens closed sections again, as the policy asks: by a run that proves the road, and learned anew after a long closure. Clocks have run on
 * meanwhile; opening a section certifies nobody.
 */
@Service
public class SectionReopening {

    private static final int CHANGES_LEAST = 5;
    private static final int CHANGES_MOST = 1_000;

    private final RouteSections sections;
    private final Knowledge knowledge;
    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final People people;
    private final Clock clock;
    private final ZoneId zone;

    SectionReopening(
            RouteSections sections,
            Knowledge knowledge,
            Holdings holdings,
            KnowledgePolicies policies,
            People people,
            Clock clock,
            ZoneId zone) {
        this.sections = sections;
        this.knowledge = knowledge;
        this.holdings = holdings;
        this.policies = policies;
        this.people = people;
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * How a section is opened again.
     *
     * @param on first day on which it is open
     * @param provedOn day of the run that proved it; null for none
     * @param prover staff number of who drove that run; blank for none
     * @param changes what is not as it was, in words
     */
    public record Opening(LocalDate on, @Nullable LocalDate provedOn, String prover, String changes) {}

    /**
     * What came of it.
     *
     * @param learnAnew whether those who held it are to be taught anew
     * @param holders how many hold it on the day it is opened
     */
    public record Opened(boolean learnAnew, int holders) {}

    /**
     * Opens a closed section again.
     *
     * @throws SectionRefusedException if it is not closed, or the policy asks for something that is missing
     */
    @Transactional
    @PreAuthorize("hasRole('MANAGER')")
    public Opened open(String code, Opening opening) {
        RouteSection section = sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
        Closure closure = section.closed().orElseThrow(() -> new SectionRefusedException("section-not-closed"));
        if (opening.on().isBefore(closure.from())) {
            throw new SectionRefusedException("reopen-day");
        }
        String changes = opening.changes().strip();
        if (changes.length() < CHANGES_LEAST || changes.length() > CHANGES_MOST) {
            throw new SectionRefusedException("reopen-changes");
        }
        KnowledgePolicy.Upkeep upkeep = policies.on(opening.on()).upkeep();
        LocalDate provedOn = opening.provedOn();
        Person prover = prover(opening);
        if (upkeep.provingRun() && (provedOn == null || prover == null)) {
            throw new SectionRefusedException("proving-run");
        }
        if (provedOn != null && provedOn.isBefore(closure.from())) {
            throw new SectionRefusedException("proving-run");
        }
        boolean learnAnew = closure.from().plusMonths(upkeep.anewMonths()).isBefore(opening.on());
        sections.reopen(
                code,
                new Closure(
                        closure.from(),
                        opening.on(),
                        learnAnew,
                        provedOn,
                        prover == null ? null : prover.id(),
                        changes));
        Subject subject = new Subject(Subject.Kind.SECTION, code);
        if (prover != null && provedOn != null) {
            knowledge.proved(prover.id(), subject, provedOn, changes);
        }
        int holders = (int) holdings.holders(subject, opening.on()).values().stream()
                .filter(Holding::counts)
                .count();
        return new Opened(learnAnew, holders);
    }

    /** Returns who drove the run that proves the road: a driver on its day, which lies within the closure and has come. */
    private @Nullable Person prover(Opening opening) {
        LocalDate day = opening.provedOn();
        if (day == null || opening.prover().isBlank()) {
            return null;
        }
        boolean within = !day.isAfter(opening.on()) && !day.isAfter(LocalDate.now(clock.withZone(zone)));
        return people.byStaffNumber(opening.prover())
                .filter(person -> within && person.holds(Post.DRIVER, day))
                .orElseThrow(() -> new SectionRefusedException("proving-run"));
    }
}
