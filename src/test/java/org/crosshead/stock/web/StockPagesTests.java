package org.crosshead.stock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.crosshead.platform.Origin;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockFixtures;
import org.crosshead.stock.StockServices;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What the pages of classes, engines, vehicles and formations show. */
class StockPagesTests {

    private StockServices services;
    private MockMvcTester pages;

    @BeforeEach
    void start() {
        services = StockServices.empty();
        pages = StockPages.of(services);
    }

    @Test
    void listsSayThatNothingIsThere() {
        assertThat(get("/classes")).contains("No class of engines has been entered yet.");
        assertThat(get("/engines")).contains("No engine has been entered yet.");
        assertThat(get("/vehicles")).contains("No kind of vehicle has been entered yet.");
        assertThat(get("/formations")).contains("No formation has been entered yet.");
    }

    @Test
    void aClassShowsItsFiguresWithUnitAndSource() {
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");

        assertThat(get("/classes/M6"))
                .contains("Mixed traffic 4-6-0", "225 lb/sq in", "6 ft")
                .contains("maker&#39;s: invented drawing", "entered by Anna, 6 May 2030")
                .doesNotContain("stock.", "??");
        assertThat(get("/classes")).contains("Mixed traffic 4-6-0", "complete");
    }

    @Test
    void aClassShowsItsCurvesAlsoAsATable() {
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");

        // The engine of the tests gives 100 kN in full gear times cutoff: 75 kN, 16,861 lbf.
        assertThat(get("/classes/M6"))
                .contains("<svg", "Cutoff 75 %, lbf", "16,861")
                .doesNotContainPattern("\\sstyle=");
    }

    @Test
    void aNoteIsShownAsTextWhateverItHolds() {
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");

        assertThat(get("/classes/M6"))
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script");
    }

    @Test
    void anUnknownFigureIsADashWithWhyAndKeepsTheCurvesAway() {
        services.classes()
                .enter(
                        StockFixtures.classOf(StockFixtures.with(
                                StockFixtures.mixedTrafficFigures(), StockFixtures.unknown("grate_area", "sq ft"))),
                        "first entry");

        assertThat(get("/classes/M6"))
                .contains("–", "Not known: drawing lost", "A forecast needs it.")
                .contains("No forecast can be made yet", "href=\"#figures-grate_area\"")
                .contains("The curves can be drawn once every figure that they need is known.")
                .doesNotContain("<svg");
        assertThat(get("/classes")).contains("one figure not known");
    }

    @Test
    void onlyAnInspectorIsOfferedToAcceptAnEstimate() {
        services.classes()
                .enter(
                        StockFixtures.classOf(
                                StockFixtures.without(StockFixtures.mixedTrafficFigures(), "least_cutoff")),
                        "first entry");

        assertThat(get("/classes/M6"))
                .contains("An estimate is on offer: about 25 %", "common practice")
                .doesNotContain("Accept this estimate", "/edit", "about 25 %</span>");
        assertThat(getAsInspector("/classes/M6"))
                .contains("Accept this estimate", "action=\"/classes/M6/estimates/least_cutoff\"", "/classes/M6/edit");
    }

    @Test
    void anAcceptedEstimateIsMarkedAboutWithItsRule() {
        services.classes()
                .enter(
                        StockFixtures.classOf(
                                StockFixtures.without(StockFixtures.mixedTrafficFigures(), "least_cutoff")),
                        "first entry");

        MvcTestResult result = pages.post()
                .uri("/classes/M6/estimates/least_cutoff")
                .with(StockPages.INSPECTOR)
                .exchange();

        assertThat(result).hasStatus(303).hasRedirectedUrl("/classes/M6");
        assertThat(result).flash().containsEntry("done", "stock.done.estimate-accepted");
        assertThat(get("/classes/M6"))
                .contains("<span class=\"estimate\">about 25 %</span>")
                .contains("estimated: not worked below 25 per cent", "accepted by Anna, 6 May 2030")
                .doesNotContain("An estimate is on offer: about 25 %");
    }

    @Test
    void acceptingWhatIsKnownIsRefusedInWords() {
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");

        MvcTestResult result = pages.post()
                .uri("/classes/M6/estimates/least_cutoff")
                .with(StockPages.INSPECTOR)
                .exchange();

        assertThat(result).hasStatus(422).bodyText().contains("There is no estimate to accept", "Least working cutoff");
    }

    @Test
    void anEngineShowsItsOwnFiguresAlone() {
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");
        services.engines()
                .enter(
                        new EngineDraft(
                                "612",
                                "Invention",
                                "M6",
                                "Steams best with a thin fire",
                                List.of(
                                        StockFixtures.made("driving_wheel", 71, "in"),
                                        new SourcedFigure(
                                                "boiler_water_full", 950.0, "gal", Origin.ESTIMATED, "by eye", false))),
                        "tyres turned");

        assertThat(get("/engines/612"))
                .contains("Engine 612 Invention", "Steams best with a thin fire", "71 in", "Mixed traffic 4-6-0")
                .contains("An estimate is on offer: about 950 gallons. Rule: by eye.")
                .doesNotContain("225 lb/sq in", "??");
        assertThat(get("/engines")).contains("612", "Mixed traffic 4-6-0");
        assertThat(get("/classes/M6")).contains("612 Invention");

        pages.post()
                .uri("/engines/612/estimates/boiler_water_full")
                .with(StockPages.INSPECTOR)
                .exchange();
        assertThat(get("/engines/612")).contains("about 950 gallons</span>", "estimated: by eye");
    }

    @Test
    void aFormationShowsItsTotalsAndVehicles() {
        services.kinds().enter(StockFixtures.coach("COACH", BrakeKind.VACUUM), "first entry");
        services.kinds().enter(StockFixtures.wagon(), "first entry");
        services.formations()
                .enter(
                        new FormationDraft(
                                "F1",
                                "Three coaches and a wagon",
                                List.of(StockFixtures.item("COACH", 3), StockFixtures.item("WAGON", 1))),
                        "first entry");

        assertThat(get("/formations/F1"))
                .contains("116.0 tons", "97.0 tons", "200 ft", "Invented bogie coach", "Invented open wagon")
                .contains("85 %") // 99 of 116 tons on working brakes
                .doesNotContain("??");
        assertThat(get("/formations")).contains("Three coaches and a wagon", "116.0 tons");
    }

    @Test
    void aFormationNamesWhatItsKindsLack() {
        services.kinds()
                .enter(
                        StockFixtures.kindOf(StockFixtures.without(
                                StockFixtures.coach("COACH", BrakeKind.VACUUM).figures(), "length")),
                        "first entry");
        services.formations()
                .enter(new FormationDraft("F1", "A coach", List.of(StockFixtures.item("COACH", 1))), "first entry");

        assertThat(get("/formations/F1"))
                .contains("No forecast can be made yet", "/vehicles/COACH#figures-length")
                .doesNotContain("Totals");
        assertThat(get("/formations")).contains("one figure not known");
        assertThat(get("/vehicles/COACH")).contains("Length over buffers in all", "Not known: nobody has entered it.");
        assertThat(get("/vehicles")).contains("one figure not known");
    }

    @Test
    void whatIsNotThereIsNotFound() {
        for (String page : List.of("/classes/X", "/engines/X", "/vehicles/X", "/formations/X", "/classes/X/edit")) {
            assertThat(pages.get().uri(page).exchange()).hasStatus(404);
        }
    }

    private String get(String page) {
        return StockPages.body(pages.get().uri(page).exchange());
    }

    private String getAsInspector(String page) {
        return StockPages.body(pages.get().uri(page).with(StockPages.INSPECTOR).exchange());
    }
}
