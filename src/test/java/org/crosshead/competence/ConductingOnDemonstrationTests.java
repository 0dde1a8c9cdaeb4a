package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.crosshead.Acting;
import org.crosshead.competence.Conducting.Case;
import org.crosshead.competence.Conducting.State;
import org.crosshead.competence.KnowledgePolicy.Regime;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.crew.People;
import org.crosshead.platform.ServiceJob;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Transactional;

/** The express of the demonstration: its driver's knowledge of the fall has lapsed, an inspector who holds it goes along. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:permits;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@Transactional
class ConductingOnDemonstrationTests {

    @Autowired
    private ConductorDrivers conductors;

    @Autowired
    private Diversions diversions;

    @Autowired
    private TrainCover cover;

    @Autowired
    private Permits permits;

    @Autowired
    private Decisions decisions;

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

    private long person(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow().id();
    }

    private long train(String code) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return trains.find(code, today).orElseThrow().id();
    }

    private static void office(Runnable work) {
        ServiceJob.run(Set.of("MANAGER", "INSPECTOR"), work);
    }

    private void as(String staffNumber, Runnable work) {
        Acting.as(person(staffNumber), "INSPECTOR", work);
    }

    private Answer answer(long trainId) {
        return permits.of(trainId).answer();
    }

    private void refused(String code, Runnable work) {
        assertThatThrownBy(work::run).isInstanceOf(ActRefusedException.class).hasMessage(code);
    }

    @Test
    void trainIsConductedOnlyWhileWhoGoesAlongSaysThatTheyConduct() throws Exception {
        long express = train("1X01");
        assertThat(answer(express)).isEqualTo(Answer.CONDUCTED);
        Conducting asked = conductors.of(express).get(0);
        assertThat(asked.conductorId()).isEqualTo(person("I-01"));
        as("D-05", () -> refused("not-theirs", () -> conductors.answer(asked.id(), false)));
        as("I-01", () -> conductors.answer(asked.id(), false));
        Permit told = permits.of(express);
        assertThat(told.answer()).isEqualTo(Answer.REFUSED);
        Permit.Line line = told.lines().stream()
                .filter(Permit.Line::isToBeAccepted)
                .findFirst()
                .orElseThrow();
        assertThat(line.holding().subject().code()).isEqualTo("CM-DN");
        assertThat(line.rides())
                .as("booked stops before and after the fall")
                .isEqualTo("Grindlewick \u2013 Merrowvale");
        mvc.perform(get("/permits/{id}", express).with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("has not accepted to conduct")))
                .andExpect(content()
                        .string(containsString("Ask Josephine Marlpit (I-01) to conduct Ambrose Tinder (D-01)")));
        mvc.perform(post("/permits/{id}/conducting", express)
                        .param("driver", String.valueOf(person("D-01")))
                        .param("conductor", String.valueOf(person("D-05")))
                        .param("permitted", "OWN_RULE")
                        .with(user("m").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.conducting-not-aboard"));
        mvc.perform(post("/permits/{id}/conducting", express)
                        .param("driver", String.valueOf(person("D-01")))
                        .param("conductor", String.valueOf(person("I-01")))
                        .param("permitted", "OWN_RULE")
                        .with(user("m").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(flash().attribute("done", "competence.conducting.asked"));
        assertThat(answer(express)).as("asked is not accepted").isEqualTo(Answer.REFUSED);
        as("I-01", () -> {
            assertThat(conductors.own()).hasSize(1);
            conductors.answer(conductors.own().get(0).id(), true);
        });
        assertThat(answer(express)).isEqualTo(Answer.CONDUCTED);
    }

    /** Directive 2007/59/EC Article 4(2), from memory: set cases, and the keeper of the line told beforehand; elsewhere the railway's rule. */
    @ParameterizedTest
    @CsvSource({
        "MAIN_LINE, DIVERSION, 2026-12-05T10:40:00Z, true",
        "MAIN_LINE, DIVERSION, , false",
        "MAIN_LINE, HISTORICAL_TRAIN, 2026-12-05T10:40:00Z, true",
        "MAIN_LINE, OWN_RULE, 2026-12-05T10:40:00Z, false",
        "SEPARATE_LINE, OWN_RULE, , true",
        "SEPARATE_LINE, TRAINING, , true"
    })
    void conductingIsPermittedByCase(Regime regime, Case permitted, @Nullable Instant informed, boolean may) {
        assertThat(new Conducting(1, 1, 1, 2, permitted, informed, "manager", State.ACCEPTED).isPermitted(regime))
                .isEqualTo(may);
    }

    /** The planned diversion is told beforehand, and the crew of a train that has taken it is decided on by what it runs over. */
    @Test
    void plannedDiversionIsToldBesideTheAnswer() throws Exception {
        long branch = train("2B51");
        office(() -> {
            refused("diversion-extent", () -> diversions.plan(branch, "MAIN", "Slow line", 0, 1_360));
            refused("diversion-extent", () -> diversions.plan(branch, "MAIN", "Down main", 0, 100_000));
            refused("section-route", () -> diversions.plan(branch, "NONE", "Down main", 0, 100));
            diversions.plan(branch, "MAIN", "Down main", 1_400, 1_800);
        });
        Permit told = permits.of(branch);
        assertThat(told.answer()).isEqualTo(Answer.ALLOWED);
        assertThat(told.detours()).hasSize(1).allMatch(line -> line.answer() == Answer.ALLOWED);
        assertThat(told.detours().get(0).holding().subject().code()).isEqualTo("UG-DN");
        office(() -> diversions.plan(branch, "MAIN", "Down main", 0, 1_360));
        assertThat(permits.of(branch).detours()).extracting(Permit.Line::answer).contains(Answer.REFUSED);
        assertThat(answer(branch)).isEqualTo(Answer.ALLOWED);
        mvc.perform(get("/permits/{id}", branch).with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("Planned diversions")))
                .andExpect(content().string(containsString("Route MAIN, 0m 0ch to 17m 0ch, Down main")));
        List<Diversions.Planned> planned = diversions.of(branch);
        office(() -> planned.forEach(one -> diversions.remove(branch, one.id())));
        assertThat(permits.of(branch).detours()).isEmpty();
    }

    /** Counted by hand from the ledger: the docks train is held whole by one driver, the branch train by one, the express by nobody. */
    @Test
    void trainsAreCoveredByWhoHoldsAllTheyAsk() throws Exception {
        List<TrainCover.Pattern> patterns = cover.of(null, LocalDate.now(clock.withZone(zone)), List.of(0, 13));
        assertThat(patterns)
                .extracting(TrainCover.Pattern::code)
                .as("the banker's driver is asked something else than the train's")
                .containsExactly("0L36", "1A40", "1A40", "1X01", "2B51", "2K07", "4F12", "6U20", "8S60");
        assertThat(patterns)
                .filteredOn(one -> List.of("1X01", "2B51", "2K07").contains(one.code()))
                .extracting(one -> one.drivers().get(0))
                .containsExactly(0, 1, 1);
        assertThat(patterns)
                .as("if nothing is done")
                .allMatch(one -> one.drivers().get(1) == 0);
        List<TrainCover.Pattern> umberlow = cover.of("Umberlow", LocalDate.now(clock.withZone(zone)), List.of(0));
        assertThat(umberlow)
                .extracting(TrainCover.Pattern::code)
                .as("trains of its own drivers, the banker's stretch of 1A40 among them")
                .containsExactly("0L36", "1A40", "2B51", "4F12", "6U20", "8S60");
        assertThat(umberlow)
                .filteredOn(one -> one.code().equals("2B51"))
                .extracting(one -> one.drivers().get(0))
                .containsExactly(1);
        mvc.perform(get("/cover").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("2K07 Docks stopping train")))
                .andExpect(content().string(containsString("thin")));
        mvc.perform(get("/cover").with(user("d").roles("DRIVER"))).andExpect(status().isForbidden());
    }

    /** Decided anew when the conductor driver's word changes, and what was decided before stays. */
    @Test
    void conductorDriversWordIsDecidedOnAnew() {
        long express = train("1X01");
        office(() -> decisions.decide(express, Decision.Occasion.ASKED));
        Decision before = decisions.latest(express).orElseThrow();
        as("I-01", () -> conductors.answer(conductors.of(express).get(0).id(), false));
        office(() -> decisions.decide(express, Decision.Occasion.ASKED));
        Decision after = decisions.latest(express).orElseThrow();
        assertThat(before.permit().answer()).isEqualTo(Answer.CONDUCTED);
        assertThat(after.permit().answer()).isEqualTo(Answer.REFUSED);
        assertThat(before.kept().again().saysTheSame(before.permit())).isTrue();
        assertThat(after.kept().again().saysTheSame(after.permit())).isTrue();
    }
}
