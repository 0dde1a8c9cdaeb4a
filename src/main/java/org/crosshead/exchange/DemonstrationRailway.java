package org.crosshead.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.crosshead.briefing.Policies;
import org.crosshead.competence.ClassGuides;
import org.crosshead.competence.Conducting;
import org.crosshead.competence.ConductorDrivers;
import org.crosshead.competence.Permit;
import org.crosshead.competence.Permits;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.LearningPlans;
import org.crosshead.platform.ServiceJob;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.working.Trains;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.core.annotation.Order;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/** Imports the demonstration railway, all of it invented, at the first start, as a user would import files of their own. */
@Component
@Profile("demo")
@Order(0) // before whatever wants its people to be there
class DemonstrationRailway implements ApplicationRunner {

    private static final String FILES = "classpath:demo/*.csv";
    private static final String NOT_APPROVED = "UH";
    private static final String GUIDE_NOT_APPROVED = "A8";
    private static final Logger LOG = LoggerFactory.getLogger(DemonstrationRailway.class);

    private final Importer importer;
    private final Routes routes;
    private final RouteSections sections;
    private final ClassGuides guides;
    private final Policies figures;
    private final LearningPlans plans;
    private final ConductorDrivers conductors;
    private final Permits permits;
    private final Trains trains;
    private final Clock clock;
    private final ZoneId zone;

    DemonstrationRailway(
            Importer importer,
            Routes routes,
            RouteSections sections,
            ClassGuides guides,
            Policies figures,
            LearningPlans plans,
            ConductorDrivers conductors,
            Permits permits,
            Trains trains,
            Clock clock,
            ZoneId zone) {
        this.conductors = conductors;
        this.permits = permits;
        this.trains = trains;
        this.clock = clock;
        this.zone = zone;
        this.plans = plans;
        this.sections = sections;
        this.guides = guides;
        this.figures = figures;
        this.importer = importer;
        this.routes = routes;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (routes.all().isEmpty()) {
            ServiceJob.run(
                    Set.of("INSPECTOR", "MANAGER"),
                    () -> importer.enter(files(), "Demonstration railway, all of it invented"));
            ServiceJob.run(Set.of("MANAGER"), this::approve);
            ServiceJob.run(
                    Set.of("MANAGER"), () -> plans.open("F-01", new Subject(Subject.Kind.SECTION, "UG-DN"), null));
            ServiceJob.run(Set.of("MANAGER"), this::conduct);
            LOG.info("The demonstration railway has been imported");
        }
    }

    /** Whoever goes along and could conduct has accepted. */
    private void conduct() {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        trains.between(today, today)
                .forEach(train -> permits.of(train.id()).lines().stream()
                        .filter(Permit.Line::isToBeAccepted)
                        .forEach(line -> conductors.ask(
                                train.id(),
                                line.personId(),
                                line.conductors().get(0),
                                Conducting.Case.OWN_RULE,
                                null)));
        trains.between(today, today).stream()
                .flatMap(train -> conductors.of(train.id()).stream())
                .forEach(asked -> conductors.answer(asked.id(), true));
    }

    /** All figures; all sections but one, and all guides but one, so that there is one to be approved. */
    private void approve() {
        figures.proposed()
                .forEach(one -> figures.approve(one.figure().key(), one.figure().version()));
        sections.all().stream()
                .filter(section -> !section.code().equals(NOT_APPROVED))
                .forEach(section -> sections.approve(section.code(), section.version()));
        guides.all().stream()
                .filter(guide -> !guide.classCode().equals(GUIDE_NOT_APPROVED))
                .forEach(guide -> guides.approve(guide.classCode(), guide.version()));
    }

    static List<Upload> files() {
        try {
            return Arrays.stream(new PathMatchingResourcePatternResolver().getResources(FILES))
                    .map(DemonstrationRailway::upload)
                    .toList();
        } catch (IOException ex) {
            throw new UncheckedIOException("the files of the demonstration could not be listed", ex);
        }
    }

    private static Upload upload(Resource file) {
        try (InputStream content = file.getInputStream()) {
            return Upload.of(String.valueOf(file.getFilename()), content.readAllBytes());
        } catch (IOException ex) {
            throw new UncheckedIOException("a file of the demonstration could not be read", ex);
        }
    }
}
