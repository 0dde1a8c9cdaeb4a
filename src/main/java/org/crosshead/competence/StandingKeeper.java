package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionChanged;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Keeps what is derived from the events in step with the rules by which it is derived: made whole at a start where nothing is derived
 * yet or a version of the policy has come into force since, and for one section where its band changes. What is out of step meanwhile is
 * answered from the events themselves: slower, and right.
 */
@Component
public class StandingKeeper implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(StandingKeeper.class);

    private final EventStore events;
    private final StandingStore standings;
    private final Knowledge knowledge;
    private final KnowledgePolicies policies;
    private final RouteSections sections;
    private final Clock clock;
    private final ZoneId zone;

    StandingKeeper(
            EventStore events,
            StandingStore standings,
            Knowledge knowledge,
            KnowledgePolicies policies,
            RouteSections sections,
            Clock clock,
            ZoneId zone) {
        this.events = events;
        this.standings = standings;
        this.knowledge = knowledge;
        this.policies = policies;
        this.sections = sections;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        int assessment = policies.on(LocalDate.now(clock.withZone(zone))).assessmentMonths();
        boolean otherRules = standings.isDerivedOtherwise(assessment);
        if (standings.isEmpty() || otherRules) {
            deriveAll();
        }
    }

    /** Derives anew what everybody holds, person by person, on as many threads as there are processors. */
    public void deriveAll() {
        List<Long> people = events.people();
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<?>> parts = new ArrayList<>();
            people.forEach(person -> parts.add(workers.submit(() -> knowledge.derive(person))));
            for (Future<?> part : parts) {
                part.get();
            }
        } catch (InterruptedException ex) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("what people hold was not derived to the end", ex);
        } catch (ExecutionException ex) {
            throw new IllegalStateException("what people hold could not be derived", ex);
        } finally {
            workers.shutdownNow();
        }
        LOG.info("What {} people hold has been derived anew", people.size());
    }

    /** Derives everything anew, in the background, where a version is approved that holds today; once it is stored. */
    @TransactionalEventListener(fallbackExecution = true)
    void approved(PolicyApproved approved) {
        if (!approved.validFrom().isAfter(LocalDate.now(clock.withZone(zone)))) {
            Thread thread = new Thread(this::deriveAll, "derive-standings");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Derives a section anew where its band has changed. */
    @EventListener
    void changed(SectionChanged changed) {
        Subject subject = new Subject(Subject.Kind.SECTION, changed.code());
        sections.find(changed.code()).ifPresent(section -> {
            int months = policies.on(LocalDate.now(clock.withZone(zone))).lapseMonths(section.band());
            standings.of(subject).stream()
                    .filter(row -> row.lapseMonths() != months)
                    .forEach(row -> knowledge.deriveAgain(row.personId(), subject));
        });
    }
}
