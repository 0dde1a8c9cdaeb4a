package org.crosshead.stock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.crosshead.platform.Origin;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockFixtures;
import org.crosshead.stock.StockServices;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What the forms of classes, engines, vehicles and formations take, and what they refuse in which words. */
class StockFormsTests {

    private StockServices services;
    private MockMvcTester pages;

    @BeforeEach
    void start() {
        services = StockServices.empty();
        pages = StockPages.of(services);
        services.classes().enter(StockFixtures.mixedTrafficClass(), "first entry");
        services.kinds().enter(StockFixtures.coach("COACH", BrakeKind.VACUUM), "first entry");
    }

    @Test
    void formsOpenReadyFilled() {
        assertThat(get("/classes/new")).contains("value=\"First entry\"", "name=\"basedOn\" value=\"0\"");
        assertThat(get("/classes/M6/edit"))
                .contains("value=\"Mixed traffic 4-6-0\"", "name=\"basedOn\" value=\"1\"")
                .contains("name=\"figures.boiler_pressure.value\" value=\"225\"", "Full gear, cocks open")
                .contains("value=\"in\"", "selected")
                .doesNotContain("??", "name=\"code\"");
        assertThat(get("/classes/new?from=M6"))
                .contains("name=\"figures.boiler_pressure.value\" value=\"225\"", "name=\"code\" value=\"\"");
        assertThat(get("/vehicles/COACH/edit")).contains("name=\"figures.tare.value\" value=\"30\"");
        assertThat(get("/vehicles/new")).contains("value=\"First entry\"").doesNotContain("??");
        assertThat(get("/engines/new?classCode=M6")).contains("value=\"First entry\"", "Mixed traffic 4-6-0");
        assertThat(get("/formations/new"))
                .contains("name=\"items[4].count\"", "Invented bogie coach")
                .doesNotContain("name=\"items[5].count\"", "??");
    }

    @Test
    void everyFieldHasALabelAndEveryIdIsThereOnce() {
        for (String page : List.of(
                "/classes/M6/edit", "/vehicles/COACH/edit", "/engines/new", "/formations/new", "/classes/new")) {
            FormMarkup markup = FormMarkup.of(get(page));
            assertThat(markup.ids()).as(page).doesNotHaveDuplicates();
            assertThat(markup.labelled()).as(page).containsAll(markup.fields());
        }
    }

    @Test
    void aChangedFigureIsANewRevisionAndTheRestIsAsItWas() {
        LocomotiveClassDraft before =
                services.classes().current("M6").orElseThrow().content();

        MvcTestResult result = post(
                "/classes/M6/edit",
                form("/classes/M6/edit")
                        .with("figures.engine_weight.value", "74.5")
                        .with("reason", "weighed again"));

        assertThat(result).hasStatus(303).hasRedirectedUrl("/classes/M6");
        assertThat(result).flash().containsEntry("done", "stock.done.stored");
        LocomotiveClassDraft after =
                services.classes().current("M6").orElseThrow().content();
        assertThat(after.figures())
                .containsExactlyInAnyOrderElementsOf(
                        StockFixtures.with(before.figures(), StockFixtures.made("engine_weight", 74.5, "tons")));
        assertThat(after.notes()).isEqualTo(before.notes());
        assertThat(after.name()).isEqualTo(before.name());
    }

    @Test
    void refusesAnImpossibleFigureBesideItsField() {
        MvcTestResult result = post(
                "/classes/M6/edit",
                form("/classes/M6/edit")
                        .with("figures.full_gear_cutoff.value", "140")
                        .with("reason", "odd"));

        assertThat(StockPages.refused(result))
                .contains("Nothing was stored.", "href=\"#figures-full_gear_cutoff\"")
                .contains("140 % is outside what is sensible. Check value and unit; enter from 40 to 90 %")
                .contains("name=\"figures.full_gear_cutoff.value\" value=\"140\" aria-invalid=\"true\"");
        assertThat(services.classes().current("M6").orElseThrow().number()).isEqualTo(1);
    }

    @Test
    void refusesWhatIsNoNumberAndWhatHasNoSource() {
        assertThat(StockPages.refused(post(
                        "/classes/M6/edit",
                        form("/classes/M6/edit")
                                .with("figures.engine_weight.value", "seventy")
                                .with("reason", "odd"))))
                .contains("seventy is not a number. Enter figures with a full stop for the decimals");
        assertThat(StockPages.refused(post(
                        "/classes/M6/edit", form("/classes/M6/edit").with("figures.engine_weight.origin", "UNKNOWN"))))
                .contains("Say where this value comes from.", "Please fill this in.");
    }

    @Test
    void anEstimateTypedInWaitsToBeAccepted() {
        post(
                "/classes/M6/edit",
                form("/classes/M6/edit")
                        .with("figures.engine_weight.origin", "ESTIMATED")
                        .with("figures.engine_weight.note", "from a sister class")
                        .with("reason", "papers doubtful"));

        assertThat(services.classes().current("M6").orElseThrow().content().figures())
                .contains(new SourcedFigure(
                        "engine_weight", 72.0, "tons", Origin.ESTIMATED, "from a sister class", false));
        assertThat(get("/classes/M6")).contains("An estimate is on offer: about 72 tons. Rule: from a sister class.");
    }

    @Test
    void anAcceptedEstimateStaysAcceptedWhenAnotherFigureIsChanged() {
        services.classes()
                .enter(
                        StockFixtures.classOf(
                                StockFixtures.without(StockFixtures.mixedTrafficFigures(), "least_cutoff")),
                        "papers lost");
        services.classes().acceptEstimate("M6", "least_cutoff");

        post(
                "/classes/M6/edit",
                form("/classes/M6/edit")
                        .with("figures.engine_weight.value", "74")
                        .with("reason", "weighed"));

        assertThat(get("/classes/M6")).contains("about 25 %</span>").doesNotContain("on offer: about 25 %");
    }

    @Test
    void aFormOfAnOlderRevisionIsRefused() {
        Form old = form("/classes/M6/edit").with("reason", "second thought");
        services.classes().enter(StockFixtures.mixedTrafficClass(), "meanwhile");

        assertThat(StockPages.refused(post("/classes/M6/edit", old)))
                .contains("Somebody else has changed M6 meanwhile.", "href=\"#reason\"");
        assertThat(services.classes().current("M6").orElseThrow().number()).isEqualTo(2);
    }

    @Test
    void aCodeThatIsTakenOrCannotStandInAnAddressIsRefused() {
        assertThat(StockPages.refused(
                        post("/classes/new", form("/classes/new?from=M6").with("code", "M6"))))
                .contains("M6 is there already.", "href=\"#code\"");
        assertThat(StockPages.refused(
                        post("/classes/new", form("/classes/new?from=M6").with("code", "a/b"))))
                .contains("a/b is no code that can be used.");
        assertThat(StockPages.refused(
                        post("/classes/new", form("/classes/new?from=M6").with("code", "new"))))
                .contains("new is no code that can be used.");
        assertThat(post("/classes/new", form("/classes/new?from=M6").with("code", "M7")))
                .hasStatus(303)
                .hasRedirectedUrl("/classes/M7");
    }

    @Test
    void anEngineOfAnUnknownClassIsRefused() {
        Form form = form("/engines/new").with("number", "612").with("classCode", "X9");

        assertThat(StockPages.refused(post("/engines/new", form)))
                .contains("There is no class X9.", "href=\"#classCode\"");
        assertThat(post("/engines/new", form.with("classCode", "M6"))).hasRedirectedUrl("/engines/612");
        assertThat(services.engines().current("612").orElseThrow().content())
                .isEqualTo(new EngineDraft("612", "", "M6", "", List.of()));
    }

    @Test
    void aFormationTakesItsFilledRowsInOrder() {
        Form form = form("/formations/new")
                .with("code", "F1")
                .with("name", "Two coaches")
                .with("items[1].vehicleKindCode", "COACH")
                .with("items[1].count", "1")
                .with("items[1].loadTons", "2.5")
                .with("items[1].vehicleNumber", "4711")
                .with("items[1].brakeCutOut", "true")
                .with("items[3].vehicleKindCode", "COACH")
                .with("items[3].count", "1");

        assertThat(post("/formations/new", form)).hasStatus(303).hasRedirectedUrl("/formations/F1");
        assertThat(services.formations().current("F1").orElseThrow().content().items())
                .containsExactly(
                        new FormationDraft.Item("COACH", 1, 2.5, "4711", false), StockFixtures.item("COACH", 1));
    }

    @Test
    void aFormationIsRefusedRowByRow() {
        Form form = form("/formations/new").with("code", "F1").with("name", "Odd");

        assertThat(StockPages.refused(post("/formations/new", form))).contains("A formation has at least one vehicle.");
        assertThat(StockPages.refused(post("/formations/new", form.with("items[2].count", "4"))))
                .contains("Choose the kind of vehicle, or clear the whole row.", "Row 1, Kind")
                .contains("href=\"#items-0-vehicleKindCode\"", "name=\"items[0].count\" value=\"4\"");
        Form kind = form.with("items[0].vehicleKindCode", "COACH");
        assertThat(StockPages.refused(post("/formations/new", kind.with("items[0].count", "10000"))))
                .contains("10,000 vehicles are too many. A formation has at most 200.");
        assertThat(StockPages.refused(post("/formations/new", kind.with("items[0].count", "0"))))
                .contains("0 vehicles are none.");
        assertThat(StockPages.refused(post("/formations/new", kind.with("items[0].count", "2.5"))))
                .contains("2.5 is not a whole number.");
        assertThat(StockPages.refused(
                        post("/formations/new", kind.with("items[0].count", "1").with("items[0].loadTons", "-1"))))
                .contains("-1 tons is outside what is sensible.");
        assertThat(services.formations().all()).isEmpty();
    }

    @Test
    void whatWasTypedComesBackAsTextWhateverItHolds() {
        Form form = form("/vehicles/new")
                .with("code", "V")
                .with("name", "\"><script>alert(1)</script>")
                .with("reason", "");

        assertThat(StockPages.refused(post("/vehicles/new", form)))
                .contains("&quot;&gt;&lt;script&gt;alert(1)")
                .doesNotContain("<script");
    }

    @Test
    void aVehicleWithANegativeOrNoWeightIsRefused() {
        Form form = form("/vehicles/COACH/edit").with("reason", "odd");

        assertThat(StockPages.refused(post("/vehicles/COACH/edit", form.with("figures.tare.value", "0"))))
                .contains("0 tons is outside what is sensible.");
        assertThat(StockPages.refused(post("/vehicles/COACH/edit", form.with("figures.tare.value", "-3"))))
                .contains("-3 tons is outside what is sensible.");
    }

    private String get(String page) {
        return StockPages.body(pages.get().uri(page).with(StockPages.INSPECTOR).exchange());
    }

    private Form form(String page) {
        return FormMarkup.of(get(page)).form();
    }

    private MvcTestResult post(String address, Form form) {
        var request = pages.post().uri(address).with(StockPages.INSPECTOR);
        form.fields().forEach(request::param);
        return request.exchange();
    }
}
