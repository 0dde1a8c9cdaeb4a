package org.crosshead.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.load.LoadAnswer.Section;
import org.crosshead.load.LoadAnswer.What;
import org.crosshead.route.Direction;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;

/** Loads over the demonstration railway, whose bank of 1 in 100 lies between Grindlewick and Corbel Top. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:loads;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
class GreatestLoadsTests {

    private static final LoadQuestion EXPRESS =
            new LoadQuestion("MAIN", Direction.RISING, false, "E4", "COACH", RailState.DRY, 15, 0.75);

    @Autowired
    private GreatestLoads loads;

    @Autowired
    private MockMvc mvc;

    private LoadAnswer.Known known(LoadQuestion asked) {
        return (LoadAnswer.Known) loads.answer(asked).orElseThrow();
    }

    private static Section bank(LoadAnswer.Known answer) {
        return answer.sections().stream()
                .filter(section -> section.to().equals("Corbel Top"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theBankTakesLessThanTheLevelAndTellsWhatStops() {
        LoadAnswer.Known answer = known(EXPRESS);
        Section bank = bank(answer);

        assertThat(answer.sections()).hasSizeGreaterThan(4).first().satisfies(first -> {
            assertThat(first.from()).isEqualTo("Zellbury Quay");
            assertThat(first.steady().vehicles()).isGreaterThan(bank.steady().vehicles());
        });
        assertThat(bank.started().stopped()).isNotNull();
        assertThat(bank.steady().tons()).isBetween(200.0, 700.0);
        assertThat(bank.worked().stopped())
                .isNotNull()
                .extracting(LoadAnswer.Stopped::what)
                .isIn(What.STANDS, What.PRESSURE);
    }

    /**
     * What is kept moving steadily balances: pull less resistances and gravity are spare for the load found, and short for one
     * vehicle more. On a long bank the gravity of a 1 in 100 is 22.4 lb for each ton, so that some 26,000 lb of pull at most take
     * 26,000 / (22.4 + 5) tons with the engine's 131: the load is below that.
     */
    @Test
    void steadyLoadIsBelowWhatTheStartingFormulaCouldTake() {
        double formulaLbf = 0.85 * 225 * 20 * 20 * 28 / 79;
        assertThat(bank(known(EXPRESS)).steady().tons()).isLessThan(formulaLbf / (22.4 + 5) - 131);
    }

    @ParameterizedTest
    @CsvSource({"WET", "DAMP", "GREASY"})
    void aPoorRailNeverTakesMore(RailState rail) {
        LoadQuestion poor = new LoadQuestion("MAIN", Direction.RISING, false, "E4", "COACH", rail, 15, 0.75);
        Section dry = bank(known(EXPRESS));
        Section worse = bank(known(poor));
        assertThat(worse.started().vehicles()).isLessThanOrEqualTo(dry.started().vehicles());
        assertThat(worse.steady().vehicles()).isLessThanOrEqualTo(dry.steady().vehicles());
    }

    @Test
    void moreSpeedOrMorePressureTakesLess() {
        Section slow = bank(known(EXPRESS));
        Section fast =
                bank(known(new LoadQuestion("MAIN", Direction.RISING, false, "E4", "COACH", RailState.DRY, 35, 0.75)));
        Section full =
                bank(known(new LoadQuestion("MAIN", Direction.RISING, false, "E4", "COACH", RailState.DRY, 15, 0.95)));
        assertThat(fast.steady().vehicles()).isLessThan(slow.steady().vehicles());
        assertThat(full.worked().vehicles()).isLessThan(slow.worked().vehicles());
        assertThat(full.steady().vehicles()).isEqualTo(slow.steady().vehicles());
    }

    @Test
    void runsGrowSlowerAndEndWithOneThatIsStopped() {
        List<LoadAnswer.Run> runs = known(EXPRESS).runs();
        assertThat(runs).hasSizeGreaterThan(3);
        for (int i = 1; i < runs.size(); i++) {
            assertThat(runs.get(i).vehicles()).isGreaterThan(runs.get(i - 1).vehicles());
        }
        assertThat(runs.get(0).stopped()).isNull();
        assertThat(runs.get(0).minutes()).isNotNull();
        assertThat(runs.get(runs.size() - 1).stopped()).isNotNull();
        assertThat(runs.get(0).slowest().value())
                .isGreaterThan(runs.get(3).slowest().value());
    }

    @Test
    void theOtherWayIsAnotherRoad() {
        LoadAnswer.Known up =
                known(new LoadQuestion("MAIN", Direction.FALLING, true, "E4", "COACH", RailState.DRY, 15, 0.75));
        assertThat(up.sections()).first().extracting(Section::from).isEqualTo("Quillhaven");
        assertThat(up.sections()).hasSameSizeAs(known(EXPRESS).sections());
        assertThat(up.sections().get(0).started().tons()
                        / up.sections().get(0).started().vehicles())
                .isCloseTo(34, within(0.5));
    }

    @Test
    void unknownNamesAreNotAnswered() {
        assertThat(loads.answer(
                        new LoadQuestion("GHOST", Direction.RISING, false, "E4", "COACH", RailState.DRY, 15, 0.75)))
                .isEmpty();
    }

    @Test
    void thePageAnswersInWordsAndRefusesWhatCannotBe() throws Exception {
        mvc.perform(get("/loads?route=MAIN&direction=RISING&class=E4&kind=COACH&rail=DRY&speed=15&pressure=75")
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andExpect(content().string(Matchers.containsString("Grindlewick to Corbel Top")))
                .andExpect(content().string(Matchers.containsString("tons (")));
        mvc.perform(get("/loads?route=MAIN&direction=RISING&class=E4&kind=COACH&rail=DRY&speed=0&pressure=140")
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(Matchers.containsString("from 1 to 60 mph")))
                .andExpect(content().string(Matchers.containsString("from 30 to 100 per cent")));
        mvc.perform(get("/loads?route=MAIN&class=NONE&kind=COACH")
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(Matchers.containsString("is not stored")));
        mvc.perform(get("/loads?route=MAIN&class=E4&kind=COACH&rail=ICE")
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isUnprocessableContent());
    }
}
