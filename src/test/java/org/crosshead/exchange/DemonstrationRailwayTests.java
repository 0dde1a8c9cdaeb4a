package org.crosshead.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.crosshead.crew.People;
import org.crosshead.crew.Post;
import org.crosshead.route.Restrictions;
import org.crosshead.route.Routes;
import org.crosshead.stock.Engines;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;

/** The demonstration railway goes in whole at the first start, and only then. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:demonstration;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
class DemonstrationRailwayTests {

    @Autowired
    private DemonstrationRailway railway;

    @Autowired
    private DraftEntry.StockServices stock;

    @Autowired
    private Routes routes;

    @Autowired
    private Restrictions restrictions;

    @Autowired
    private People people;

    @Autowired
    private Trains trains;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Test
    void isImportedWholeAtTheFirstStartAndLeftAloneAfterwards() {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        int before = revisions();

        railway.run(new DefaultApplicationArguments());

        assertThat(revisions()).isEqualTo(before).isEqualTo(3 + 4 + 7 + 10 + 8);
        assertThat(routes.junctions()).hasSize(2);
        assertThat(restrictions.inForce("MAIN", clock.instant(), clock.instant()))
                .hasSize(2);
        assertThat(trains.between(today.minusDays(1), today)).hasSize(8);
        assertThat(people.byStaffNumber("D-05").orElseThrow().holds(Post.DRIVER, today))
                .isTrue();
        assertThat(people.byStaffNumber("D-05").orElseThrow().holds(Post.FIREMAN, today))
                .isFalse();
    }

    private int revisions() {
        LocomotiveClasses classes = stock.classes();
        Engines engines = stock.engines();
        VehicleKinds kinds = stock.kinds();
        Formations formations = stock.formations();
        return routes.all().stream().mapToInt(route -> route.revisionNumber()).sum()
                + classes.all().stream().mapToInt(one -> one.number()).sum()
                + engines.all().stream().mapToInt(one -> one.number()).sum()
                + kinds.all().stream().mapToInt(one -> one.number()).sum()
                + formations.all().stream().mapToInt(one -> one.number()).sum();
    }
}
