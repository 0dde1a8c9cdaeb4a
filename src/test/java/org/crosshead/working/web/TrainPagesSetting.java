package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.PlatformFixtures.person;
import static org.crosshead.platform.PlatformFixtures.post;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.account.LogIn;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.RouteFixtures;
import org.crosshead.route.Routes;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.Engines;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockFixtures;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.working.Train;
import org.crosshead.working.Trains;
import org.crosshead.working.WorkingFixtures;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.annotation.Transactional;

/** The whole service on an invented railway with one train, and a browser to ask it with. */
@SpringBootTest
@AutoConfigureMockMvc
@Transactional
@WithMockUser(username = "Ines", roles = "INSPECTOR")
abstract class TrainPagesSetting {

    static final RequestPostProcessor INSPECTOR = user("Ines").roles("INSPECTOR");

    @Autowired
    MockMvcTester mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Trains trains;

    Train train;
    LogIn driver;

    @BeforeEach
    void railway(
            @Autowired Routes routes,
            @Autowired LocomotiveClasses classes,
            @Autowired Engines engines,
            @Autowired VehicleKinds kinds,
            @Autowired Formations formations) {
        routes.enter(RouteFixtures.mainLine(), "first entry");
        routes.enter(RouteFixtures.kilometreLine(), "first entry");
        routes.join(new JunctionDraft("Mitte", "MAIN", 480, "KILO", 0));
        classes.enter(StockFixtures.mixedTrafficClass(), "first entry");
        classes.enter(airBraked(), "first entry");
        engines.enter(new EngineDraft("100", "Other Engine", "A6", "", List.of()), "first entry");
        engines.enter(new EngineDraft("612", "Test Engine", "M6", "", List.of()), "first entry");
        kinds.enter(StockFixtures.coach("COACH", BrakeKind.VACUUM), "first entry");
        formations.enter(
                new FormationDraft("SET", "Three coaches", List.of(StockFixtures.item("COACH", 3))), "first entry");
        long id = person(jdbc, "T-1", "Dora Testwell");
        post(jdbc, id, "DRIVER", LocalDate.of(2000, 1, 1), null);
        post(jdbc, person(jdbc, "T-2", "Finn Testwell"), "FIREMAN", LocalDate.of(2000, 1, 1), null);
        train = trains.enter(WorkingFixtures.train());
        driver = logIn(id);
    }

    /** Sorts before the class that fits the formation, but works another brake. */
    private static LocomotiveClassDraft airBraked() {
        LocomotiveClassDraft vacuum = StockFixtures.mixedTrafficClass();
        return new LocomotiveClassDraft(
                "A6",
                "Air-braked 4-6-0",
                "Invented for tests",
                vacuum.tenderEngine(),
                vacuum.valveFamily(),
                vacuum.engineBrake(),
                BrakeKind.AIR,
                vacuum.figures(),
                List.of());
    }

    String edit() {
        return "/trains/" + train.id() + "/edit";
    }

    MvcTestResult get(String uri) {
        return as(INSPECTOR, uri);
    }

    MvcTestResult as(RequestPostProcessor who, String uri) {
        return mvc.get().uri(uri).with(who).exchange();
    }

    MvcTestResult send(String uri, Map<String, String> fields) {
        var request = mvc.post().uri(uri).with(INSPECTOR).with(csrf());
        fields.forEach(request::param);
        return request.exchange();
    }

    static String body(MvcTestResult result) {
        assertThat(result).hasStatusOk();
        return text(result);
    }

    static String refused(MvcTestResult result) {
        assertThat(result).hasStatus(422);
        return text(result);
    }

    private static String text(MvcTestResult result) {
        return org.junit.jupiter.api.Assertions.assertDoesNotThrow(
                () -> result.getResponse().getContentAsString());
    }

    private LogIn logIn(long personId) {
        jdbc.sql("""
                        insert into account (provider, subject, person_id, display_name, locked, must_change_password, version)
                        values ('password', 'dora', ?, 'Dora', false, false, 0)
                        """).param(personId).update();
        long id = jdbc.sql("select id from account where subject = 'dora'")
                .query(Long.class)
                .single();
        return new LogIn(id, personId, "dora", "Dora", 0, false);
    }
}
