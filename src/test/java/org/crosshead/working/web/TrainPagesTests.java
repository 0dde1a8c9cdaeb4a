package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.PlatformFixtures.loggedIn;
import static org.crosshead.platform.PlatformFixtures.person;
import static org.crosshead.platform.PlatformFixtures.post;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
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
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockFixtures;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.working.Train;
import org.crosshead.working.Trains;
import org.crosshead.working.WorkingFixtures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.annotation.Transactional;

/** The pages about trains as a browser gets them from the whole service, on an invented railway. */
@SpringBootTest
@AutoConfigureMockMvc
@Transactional
@WithMockUser(username = "Ines", roles = "INSPECTOR")
class TrainPagesTests {

    private static final RequestPostProcessor INSPECTOR = user("Ines").roles("INSPECTOR");

    @Autowired
    private MockMvcTester mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Trains trains;

    private Train train;
    private LogIn driver;

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

    @Test
    void showsATrainAndAScriptInARemarkAsText() {
        String page = body(get("/trains/" + train.id()));

        assertThat(page)
                .contains("W1 Anfang to Mitte", "Monday, 6 May 2030", "Three coaches", "3 vehicles, 99.0 tons")
                .contains("Rain &lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script")
                .contains(">10:00<", ">10:20<", "6m 0ch", "Dora Testwell", "09:15", "href=\"/engines/612\"")
                .contains("href=\"/briefings?train=" + train.id() + "\"", "1: ", "Ines: entered");
    }

    @Test
    void listsTheTrainsOfADay() {
        trains.cancel(train.id(), train.version(), "engine failed");

        String page = body(get("/trains?day=2030-05-06"));

        assertThat(page)
                .contains("<s>W1</s>", "cancelled", ">10:00<", "612", "3 vehicles, 99.0 tons")
                .contains("Dora Testwell, Finn Testwell", "/trains?day=2030-05-05", "/trains?day=2030-05-07");
        assertThat(body(get("/trains?day=2030-05-07"))).contains("No trains of this day");
    }

    @ParameterizedTest
    @CsvSource({"6th of May", "2030-02-30", "+999999999-01-01", "<script>"})
    void saysThatADayCanNotBeRead(String day) {
        assertThat(body(mvc.get()
                        .uri("/trains")
                        .param("day", day)
                        .with(INSPECTOR)
                        .exchange()))
                .contains("This is not a day.")
                .doesNotContain("<script>");
    }

    @Test
    void opensTheShortFormReadyFilledAndStoresItAsItStands() {
        String form = body(get("/trains/new"));
        assertThat(form).contains("value=\"N1\"", "value=\"Anfang\"", "value=\"Mitte\"", "value=\"10:00\"");
        assertThat(form).contains("selected=\"selected\">612 Test Engine").contains("Dora Testwell (T-1)");

        MvcTestResult stored = send("/trains/new", wish());

        assertThat(stored).hasStatus(303);
        Train made = trains.find("N7", LocalDate.of(2030, 5, 7)).orElseThrow();
        assertThat(stored).redirectedUrl().isEqualTo("/trains/" + made.id());
        assertThat(made.content().legs()).hasSize(2);
        assertThat(made.content().calls()).extracting("place").containsExactly("Anfang", "Mitte", "Ende");
        assertThat(made.content().engines().get(0).pressurePsi()).isEqualTo(225);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "code          | ''         | This is needed.",
                "day           | tomorrow   | This is not a day.",
                "departure     | 25:00      | This is not a time.",
                "toPlace       | Nowhere    | There is no station or timing point called Nowhere.",
                "toPlace       | Anfang     | No way was found from Anfang to Anfang",
                "engineNumber  | 9999       | There is no engine 9999.",
                "formationCode | NONE       | There is no formation NONE.",
                "formationCode | ''         | A train of this kind has vehicles.",
                "driver        | T-9        | There is no person T-9.",
                "kind          | AIRSHIP    | Choose one from the list.",
                "code          | W123456789012345678901234567890123456789012 | Give the train a code of 1 to 40 characters."
            })
    void saysBesideTheFieldOfTheShortFormWhatIsWrong(String field, String typed, String words) {
        Map<String, String> wish = wish();
        wish.put(field, typed);

        String page = refused(send("/trains/new", wish));

        assertThat(page)
                .containsSubsequence("id=\"" + field + "-problem\"", words)
                .contains("href=\"#" + field + "\"");
        assertThat(trains.between(LocalDate.of(2030, 5, 7), LocalDate.of(2030, 5, 7)))
                .isEmpty();
    }

    @Test
    void givesTheFormBackAsItWasStored() {
        String form = body(get(edit()));
        assertThat(form).contains("value=\"6m 0ch\"", "value=\"10:20\"", "value=\"90.5\"", "value=\"75\"");

        assertThat(send(edit(), stored())).hasStatus(303).redirectedUrl().isEqualTo("/trains/" + train.id());

        Train changed = trains.find(train.id()).orElseThrow();
        assertThat(changed.content()).isEqualTo(train.content());
        assertThat(changed.revision()).isEqualTo(2);
        assertThat(changed.reason()).isEqualTo("checked");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "calls[1].arrival         | 09:50        | The time at Mitte is earlier than the one before it.",
                "calls[1].arrival         | soon         | This is not a time.",
                "calls[1].atMeasure       | 5m 99ch      | This is not a position.",
                "calls[1].atMeasure       | 9m 0ch       | Mitte does not lie on leg 1 of the path.",
                "calls[0].stops           | ''           | The train must stop at Anfang",
                "legs[0].routeCode        | NOWHERE      | There is no route NOWHERE.",
                "legs[0].toMeasure        | 11m 0ch      | The leg leaves route MAIN, which runs from 0m 0ch to 10m 0ch.",
                "legs[0].line             | Fast         | Route MAIN has no line Fast.",
                "engines[0].engineNumber  | 9999         | There is no engine 9999.",
                "engines[0].pressurePsi   | lots         | This is not a number.",
                "engines[0].pressurePsi   | 500          | 500 is outside what can be: from 1 to 320.",
                "engines[0].glassShare    | 140          | 140 is outside what can be: from 0 to 100.",
                "crew[0].staffNumber      | T-9          | There is no person T-9.",
                "crew[0].bookOff          | 09:15        | The time of booking off is not after the time of booking on.",
                "formationCode            | NONE         | There is no formation NONE.",
                "day                      | Monday       | This is not a day.",
                "rail                     | SLIPPERY     | Choose one from the list.",
                "reason                   | ''           | Say in a few words why.",
                "version                  | 7            | Somebody else changed or cancelled this train meanwhile"
            })
    void saysBesideTheFieldWhatIsWrongAndStoresNothing(String field, String typed, String words) {
        Map<String, String> form = stored();
        form.put(field, typed);

        String page = refused(send(edit(), form));

        String id = field.equals("version") ? "reason" : Refusals.id(field);
        assertThat(page).containsSubsequence("id=\"" + id + "-problem\"", words).contains("href=\"#" + id + "\"");
        assertThat(trains.find(train.id()).orElseThrow()).isEqualTo(train);
    }

    @Test
    void refusesAPathWhoseEndsDoNotMeet() {
        Map<String, String> form = stored();
        form.put("legs[1].routeCode", "KILO");
        form.put("legs[1].line", "Single");
        form.put("legs[1].fromMeasure", "1.000");
        form.put("legs[1].toMeasure", "5.000");
        form.put("calls[1].stops", "true");
        form.put("calls[2].place", "Ende");
        form.put("calls[2].legNumber", "2");
        form.put("calls[2].atMeasure", "5.000");
        form.put("calls[2].arrival", "10:40");
        form.put("calls[2].stops", "true");

        assertThat(refused(send(edit(), form)))
                .containsSubsequence("id=\"legs-1-fromMeasure-problem\"", "Leg 2 does not begin where leg 1 ends");

        form.put("legs[1].fromMeasure", "0.000");
        assertThat(send(edit(), form)).hasStatus(303);
    }

    @Test
    void givesMoreRowsWithoutStoringAndKeepsWhatWasTyped() {
        Map<String, String> form = stored();
        form.put("more", "rows");
        form.put("calls[2].place", "Halfway <b>");

        String page = body(send(edit(), form));

        assertThat(page).contains("Halfway &lt;b&gt;", "calls[4].place").doesNotContain("calls[5].place");
        assertThat(trains.find(train.id()).orElseThrow()).isEqualTo(train);
    }

    @Test
    void survivesAFormOfNonsense() {
        assertThat(refused(send(edit(), Map.of("legs[7].routeCode", "MAIN", "crew[250].role", "PILOT"))))
                .contains("Nothing was stored.");
        assertThat(refused(send("/trains/new", Map.of()))).contains("This is needed.");
        assertThat(get("/trains/none")).hasStatus(400);
        assertThat(get("/trains/999999")).hasStatus(404);
    }

    @Test
    void copiesATrainToAnotherDayOnce() {
        MvcTestResult copied = send("/trains/" + train.id() + "/copy", Map.of("day", "2030-05-08"));
        assertThat(copied).hasStatus(303);
        assertThat(trains.find("W1", LocalDate.of(2030, 5, 8))).isPresent();

        assertThat(refused(send("/trains/" + train.id() + "/copy", Map.of("day", "2030-05-08"))))
                .containsSubsequence("id=\"day-problem\"", "Train W1 runs on 2030-05-08 already.");
        assertThat(refused(send("/trains/" + train.id() + "/copy", Map.of("day", "soon"))))
                .containsSubsequence("value=\"soon\"", "id=\"day-problem\"", "This is not a day.");
    }

    @Test
    void cancelsATrainForAReason() {
        String path = "/trains/" + train.id() + "/cancel";
        String version = String.valueOf(train.version());
        assertThat(refused(send(path, Map.of("version", version, "reason", " "))))
                .containsSubsequence("id=\"reason-problem\"", "Say in a few words why.");
        assertThat(refused(send(path, Map.of("version", "7", "reason", "late"))))
                .contains("Somebody else changed or cancelled this train meanwhile");

        assertThat(send(path, Map.of("version", version, "reason", "engine <b>failed</b>")))
                .hasStatus(303);

        assertThat(body(get("/trains/" + train.id())))
                .contains("<s>W1 Anfang to Mitte</s>", "by Ines: engine &lt;b&gt;failed&lt;/b&gt;")
                .doesNotContain("/cancel\"", "/edit\"");
    }

    @Test
    void showsCrewTheirOwnTrainsOnly() {
        Train other = trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W2"), train.content().engines(), List.of()));
        RequestPostProcessor dora = authentication(loggedIn(driver, "DRIVER"));

        assertThat(as(dora, "/trains/" + train.id())).hasStatusOk().bodyText().doesNotContain("<form");
        assertThat(as(dora, "/trains/" + other.id())).hasStatus(403);
        assertThat(as(dora, "/trains?day=2030-05-06"))
                .bodyText()
                .contains(">W1<")
                .doesNotContain(">W2<");
        assertThat(as(dora, "/trains/new")).hasStatus(403);
        assertThat(as(dora, edit())).hasStatus(403);
    }

    @Test
    void showsTodaysTrainsOnTheStartPage() {
        LocalDate today = LocalDate.now(ZoneOffset.UTC);
        Train own = trains.copy(train.id(), today, new org.crosshead.working.DayShift(ZoneOffset.UTC));
        Train other = trains.enter(WorkingFixtures.with(
                WorkingFixtures.train("W2", today), train.content().engines(), List.of()));

        assertThat(as(authentication(loggedIn(driver, "DRIVER")), "/"))
                .bodyText()
                .contains("Trains today", "href=\"/trains/" + own.id() + "\"", "Anfang 10.00 to Mitte 10.20")
                .doesNotContain("/trains/" + other.id() + "\"");
        assertThat(body(get("/"))).contains("/trains/" + own.id() + "\"", "/trains/" + other.id() + "\"");
    }

    private String edit() {
        return "/trains/" + train.id() + "/edit";
    }

    private static Map<String, String> wish() {
        return new LinkedHashMap<>(Map.of(
                "code", "N7",
                "fromPlace", "Anfang",
                "toPlace", "Ende",
                "day", "2030-05-07",
                "departure", "10:00",
                "kind", "PASSENGER",
                "everyStation", "true",
                "formationCode", "SET",
                "engineNumber", "612",
                "rail", "DRY"));
    }

    /** The form as the page gives it for the stored train, with a reason. */
    private Map<String, String> stored() {
        TrainForm form = new TrainFormWriter(
                        ZoneOffset.UTC, Map.of("MAIN", RouteFixtures.mainLine().measureUnit()))
                .form(train);
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("code", form.code());
        fields.put("title", form.title());
        fields.put("day", form.day());
        fields.put("kind", form.kind());
        fields.put("formationCode", form.formationCode());
        fields.put("rail", form.rail());
        fields.put("weather", form.weather());
        fields.put("dark", form.dark());
        fields.put("version", form.version());
        fields.put("reason", "checked");
        rows(fields, "legs", form.legs());
        rows(fields, "calls", form.calls());
        rows(fields, "engines", form.engines());
        rows(fields, "crew", form.crew());
        return fields;
    }

    private static void rows(Map<String, String> fields, String list, List<? extends Record> rows) {
        for (int i = 0; i < rows.size(); i++) {
            String row = rows.get(i).toString();
            String inside = row.substring(row.indexOf('[') + 1, row.length() - 1);
            for (String field : inside.split(", ", -1)) {
                String[] parts = field.split("=", 2);
                fields.put(list + "[" + i + "]." + parts[0], parts[1]);
            }
        }
    }

    private MvcTestResult get(String uri) {
        return as(INSPECTOR, uri);
    }

    private MvcTestResult as(RequestPostProcessor who, String uri) {
        return mvc.get().uri(uri).with(who).exchange();
    }

    private MvcTestResult send(String uri, Map<String, String> fields) {
        var request = mvc.post().uri(uri).with(INSPECTOR).with(csrf());
        fields.forEach(request::param);
        return request.exchange();
    }

    private static String body(MvcTestResult result) {
        assertThat(result).hasStatusOk();
        return text(result);
    }

    private static String refused(MvcTestResult result) {
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
