package org.crosshead.working.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.route.RouteFixtures;
import org.crosshead.working.Train;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form to change a train as a browser gets and sends it. */
class TrainFormTests extends TrainPagesSetting {

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
        fields.put("heated", form.heated());
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
}
