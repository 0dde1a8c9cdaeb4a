package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.PlatformFixtures.loggedIn;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.working.Train;
import org.crosshead.working.WorkingFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The pages about trains as a browser gets them: lists, one train, the short form, copies, cancelling. */
class TrainPagesTests extends TrainPagesSetting {

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
    void copiesATrainToAnotherDayOnce() {
        MvcTestResult copied = send("/trains/" + train.id() + "/copy", Map.of("day", "2030-05-08"));
        assertThat(copied).hasStatus(303);
        assertThat(trains.find("W1", LocalDate.of(2030, 5, 8))).isPresent();

        assertThat(refused(send("/trains/" + train.id() + "/copy", Map.of("day", "2030-05-08"))))
                .containsSubsequence("id=\"day-problem\"", "Train W1 runs on Wednesday, 8 May 2030 already.");
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
                WorkingFixtures.later(WorkingFixtures.train("W2"), 60),
                train.content().engines(),
                List.of()));
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
                WorkingFixtures.later(WorkingFixtures.train("W2", today), 60),
                train.content().engines(),
                List.of()));

        assertThat(as(authentication(loggedIn(driver, "DRIVER")), "/"))
                .bodyText()
                .contains("Trains today", "href=\"/trains/" + own.id() + "\"", "Anfang 10:00 to Mitte 10:20")
                .doesNotContain("/trains/" + other.id() + "\"");
        assertThat(body(get("/"))).contains("/trains/" + own.id() + "\"", "/trains/" + other.id() + "\"");
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
}
