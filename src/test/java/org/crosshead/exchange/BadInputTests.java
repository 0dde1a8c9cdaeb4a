package org.crosshead.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.transaction.annotation.Transactional;

/** One cell of the demonstration railway made wrong: a clear word beside it, and nothing of the whole railway is stored. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:bad-input;DB_CLOSE_DELAY=-1")
@WithMockUser(roles = {"INSPECTOR", "MANAGER"})
class BadInputTests {

    @Autowired
    private Importer importer;

    @Autowired
    private JdbcClient jdbc;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            mass of nothing;               vehicle-figures; COACH,tare,32,            ; COACH,tare,0,              ; vehicle-figures.csv value stock.refused.out-of-range
            mass below nothing;            vehicle-figures; COACH,tare,32,            ; COACH,tare,-32,            ; vehicle-figures.csv value stock.refused.out-of-range
            cutoff of 140 per cent;        class-figures;   E4,full_gear_cutoff,75,   ; E4,full_gear_cutoff,140,   ; class-figures.csv value stock.refused.out-of-range
            limit of 0;                    limits;          MAIN,0m 0ch,60m 0ch,60,   ; MAIN,0m 0ch,60m 0ch,0,     ; limits.csv limit route.refused.limit
            gradient of 1 in 0;            gradients;       MAIN,0m 0ch,0m 35ch,LEVEL,,; MAIN,0m 0ch,0m 35ch,ONE_IN,0,; gradients.csv value route.refused.one-in-zero
            signal outside its route;      features;        MAIN,SIGNAL,0m 8ch,       ; MAIN,SIGNAL,60m 8ch,       ; features.csv at_measure route.refused.outside
            10 000 vehicles;               formation-items; EXPRESS9,COACH,7,         ; EXPRESS9,COACH,10000,      ; formations.csv  stock.refused.too-many-vehicles
            path whose ends do not meet;   legs;            2K07,D+0,KLINE,21.6,0,    ; 2K07,D+0,KLINE,21.6,0.5,   ; legs.csv from_measure train.refused.path-broken
            booked time running backwards; calls;           ,no,,10:15:30,no          ; ,no,,10:05:30,no           ; calls.csv departure train.refused.time-backwards
            unknown engine;                engine-turns;    1X01,D+0,401,             ; 1X01,D+0,9401,             ; engine-turns.csv engine_number train.refused.engine-unknown
            word for a number;             limits;          MAIN,0m 0ch,60m 0ch,60,   ; MAIN,0m 0ch,60m 0ch,sixty, ; limits.csv limit exchange.refused.number
            formula in a cell;             people;          D-01,                     ; D-01,=1+                   ; people.csv name exchange.refused.formula
            policy that cannot be meant;   policy-figures;  hand-brakes.vehicles-to.10,2,; hand-brakes.vehicles-to.10,2.5,; policy-figures.csv value policy.refused.whole
            missing column;                limits;          tender_first,             ; ''                         ; limits.csv  exchange.refused.column-missing
            """)
    void wrongCell(String name, String file, String good, String bad, String told) {
        List<Upload> files = new ArrayList<>();
        for (Upload upload : DemonstrationRailway.files()) {
            files.add(upload.fileName().equals(file + ".csv") ? changed(upload, good, bad) : upload);
        }

        ImportRefusedException refused =
                catchThrowableOfType(ImportRefusedException.class, () -> importer.enter(files, "test"));

        assertThat(refused).isNotNull();
        assertThat(refused.problems())
                .extracting(problem -> problem.file() + " " + problem.column() + " " + problem.code())
                .anyMatch(problem -> problem.endsWith(told));
        assertNothingStored();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"a byte-order mark, true, false", "Windows line ends, false, true"})
    @Transactional
    void whatSpreadsheetsAddIsTaken(String name, boolean mark, boolean carriageReturns) {
        List<Upload> files = DemonstrationRailway.files().stream()
                .map(upload -> {
                    String text = text(upload);
                    String ends = carriageReturns ? text.replace("\n", "\r\n") : text;
                    return Upload.of(upload.fileName(), ((mark ? "\ufeff" : "") + ends).getBytes(UTF_8));
                })
                .toList();

        assertThat(importer.enter(files, name).counts()).hasSameSizeAs(files);
    }

    @Test
    void moreRowsThanTheLimit() {
        Upload people = Upload.of(
                "people.csv",
                ("staff_number,name\n"
                                + IntStream.rangeClosed(0, 5000)
                                        .mapToObj(i -> "P-" + i + ",Ida Testwell")
                                        .collect(Collectors.joining("\n")))
                        .getBytes(UTF_8));

        assertThat(catchThrowableOfType(ImportRefusedException.class, () -> importer.enter(List.of(people), "test"))
                        .problems())
                .extracting(ImportProblem::code)
                .containsExactly("exchange.refused.rows-too-many");
        assertNothingStored();
    }

    private void assertNothingStored() {
        for (String table : List.of("person", "route", "locomotive_class", "vehicle_kind", "formation", "train")) {
            assertThat(jdbc.sql("select count(*) from " + table)
                            .query(Long.class)
                            .single())
                    .as(table)
                    .isZero();
        }
    }

    private static Upload changed(Upload upload, String good, String bad) {
        String text = text(upload);
        assertThat(text).contains(good);
        return Upload.of(
                upload.fileName(), text.replaceFirst(Pattern.quote(good), bad).getBytes(UTF_8));
    }

    private static String text(Upload upload) {
        return new String(upload.content().get(), UTF_8);
    }
}
