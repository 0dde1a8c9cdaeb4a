package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.crew.People;
import org.crosshead.platform.ServiceJob;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Transactional;

/** May the crews of the demonstration railway take their trains? */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:permits;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@Transactional
class PermitsOnDemonstrationTests {

    @Autowired
    private Permits permits;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private RouteSections sections;

    @Autowired
    private Trains trains;

    @Autowired
    private People people;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Autowired
    private MockMvc mvc;

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    private long train(String code) {
        return trains.between(today(), today()).stream()
                .filter(train -> train.code().equals(code))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static <T> T asManager(Supplier<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        ServiceJob.run(Set.of("MANAGER", "INSPECTOR"), () -> result.set(work.get()));
        return java.util.Objects.requireNonNull(result.get());
    }

    private Permit told(String code) {
        return asManager(() -> permits.of(train(code)));
    }

    private long person(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow().id();
    }

    private Holding holding(String staffNumber, String section) {
        return knowledge.holding(
                person(staffNumber), new Subject(Subject.Kind.SECTION, section), today(), clock.instant());
    }

    @Test
    void driverWithOneLapsedSectionIsConductedByWhoGoesAlongAndHoldsIt() {
        Permit told = told("1X01");
        assertThat(told.answer()).isEqualTo(Answer.CONDUCTED);
        List<Permit.Line> conducted = told.lines().stream()
                .filter(line -> line.answer() == Answer.CONDUCTED)
                .toList();
        assertThat(conducted).hasSize(1);
        assertThat(conducted.get(0).holding().subject().code()).isEqualTo("CM-DN");
        assertThat(conducted.get(0).conductors()).containsExactly(person("I-01"));
    }

    @Test
    void driverAloneOnALapsedSectionIsRefusedAndWhoCouldConductIsNamed() {
        Permit told = told("4F12");
        assertThat(told.answer()).isEqualTo(Answer.REFUSED);
        Permit.Line refused = told.lines().stream()
                .filter(line -> line.answer() == Answer.REFUSED)
                .findFirst()
                .orElseThrow();
        assertThat(refused.holding().state()).isEqualTo(Holding.State.LAPSED);
        assertThat(refused.conductors()).contains(person("I-01"), person("D-05"));
        assertThat(told.instead())
                .extracting(Permit.Candidate::personId)
                .containsExactly(person("D-01"), person("D-05"));
    }

    @Test
    void everybodyElseMayAndEqualQuestionsHaveEqualAnswers() {
        for (String code : List.of("2K07", "6U20", "0L36", "1A40", "2B51", "8S60")) {
            assertThat(told(code).answer()).as(code).isEqualTo(Answer.ALLOWED);
            assertThat(told(code)).isEqualTo(told(code));
        }
    }

    @Test
    void closedSectionIsReferredAndOneThatIsNotLaidDownToo() {
        asManager(() -> {
            sections.close("UH", today());
            return true;
        });
        assertThat(told("2B51").answer()).isEqualTo(Answer.REFERRED);
    }

    /** Only a confirmed turn counts: then what was conducted keeps nothing alive, and the rest is worked. */
    @Test
    void confirmedTurnIsEnteredOnceForTheSectionsActuallyRun() {
        int made = asManager(() -> permits.confirm(train("1X01")));
        assertThat(made).isEqualTo(8);
        assertThat(asManager(() -> permits.confirm(train("1X01")))).isZero();
        assertThat(holding("D-01", "GC-DN").lastWorked()).isEqualTo(today());
        assertThat(holding("D-01", "CM-DN").state()).isEqualTo(Holding.State.LAPSED);
        assertThat(knowledge.events(person("I-01"))).anyMatch(event -> event.kind() == CompetenceEvent.Kind.CONDUCTED);
    }

    @Test
    void pagesSayItToThoseWhomItConcerns() throws Exception {
        mvc.perform(get("/permits/{id}", train("4F12"))
                        .with(csrf())
                        .with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Not by the records.")))
                .andExpect(content().string(containsString("could conduct: Josephine Marlpit (I-01)")));
        mvc.perform(get("/permits/{id}", train("4F12")).with(user("d").roles("DRIVER")))
                .andExpect(status().isForbidden());
        mvc.perform(get("/knowledge").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Corwin Latch")));
        mvc.perform(get("/knowledge").with(user("d").roles("DRIVER"))).andExpect(status().isForbidden());
        mvc.perform(get("/knowledge/D-03").with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("lapsed")));
        mvc.perform(get("/knowledge/D-03").with(user("d").roles("DRIVER"))).andExpect(status().isForbidden());
        mvc.perform(get("/knowledge/nobody").with(user("m").roles("MANAGER"))).andExpect(status().isNotFound());
        mvc.perform(get("/sections").with(user("d").roles("DRIVER"))).andExpect(status().isOk());
        mvc.perform(get("/knowledge").param("day", "not a day").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk());
    }

    @Test
    void startPageTellsTheManagerWhoMayNotGo() throws Exception {
        mvc.perform(get("/").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Crews to look at")))
                .andExpect(content().string(containsString("/permits/" + train("4F12") + "\"")))
                .andExpect(content().string(containsString("CM-DN lapsed")));
    }

    @Test
    void whatCannotBeEnteredIsRefusedInWords() throws Exception {
        String[][] wrong = {
            {"WORKED", "SECTION:UH", today().toString(), "not-offered"},
            {"AUTHORISED", "SECTION:NONE", today().toString(), "not-offered"},
            {"AUTHORISED", "SECTION:CM-DN", "yesterday", "no-day"},
            {"AUTHORISED", "SECTION:CM-DN", today().toString(), "not-assessed"},
            {"SUSPENDED", "SECTION:CM-DN", today().plusDays(1).toString(), "in-the-future"},
            {"SUSPENDED", "SECTION:CM-DN", today().toString(), "reason-missing"}
        };
        for (String[] one : wrong) {
            mvc.perform(post("/knowledge/D-03")
                            .param("kind", one[0])
                            .param("subject", one[1])
                            .param("day", one[2])
                            .param("note", "")
                            .with(user("m").roles("MANAGER"))
                            .with(csrf()))
                    .andExpect(flash().attribute("refused", "competence.refused." + one[3]));
        }
        mvc.perform(post("/sections/UH/approve")
                        .param("version", "1")
                        .with(user("d").roles("DRIVER"))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }
}
