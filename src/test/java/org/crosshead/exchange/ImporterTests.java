package org.crosshead.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.crew.People;
import org.crosshead.route.Routes;
import org.crosshead.stock.LocomotiveClasses;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.transaction.annotation.Transactional;

/** Files go in whole or not at all, through the services and their rules. All records are invented. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:importer;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc
@WithMockUser(roles = {"INSPECTOR", "MANAGER"})
class ImporterTests {

    private static final String ROUTES =
            "code,name,measure_unit,rising_name,falling_name,from_measure,to_measure,lines,estimates_accepted\n";
    private static final String GRADIENTS = "route_code,from_measure,to_measure,notation,value,origin,note\n";
    private static final String PEOPLE = "staff_number,name\n";

    @Autowired
    private Importer importer;

    @Autowired
    private Routes routes;

    @Autowired
    private People people;

    @Autowired
    private LocomotiveClasses classes;

    @Autowired
    private JdbcClient jdbc;

    @Test
    @Transactional
    void storesWhatTheFilesSay() {
        Imported imported = importer.enter(
                List.of(
                        file("routes.csv", ROUTES + "T,Test line,CHAINS,Down,Up,0m,1m 40ch,Single,no\n"),
                        file(
                                "gradients.csv",
                                GRADIENTS + "T,1m,1m 40ch,LEVEL,,SURVEYED,\nT,0m,1m,ONE_IN,-80,SURVEYED,\n")),
                "test");

        assertThat(imported.counts())
                .containsExactly(new Imported.Count("routes.csv", 1), new Imported.Count("gradients.csv", 2));
        assertThat(routes.current("T").orElseThrow().content().gradients())
                .extracting(length -> length.value())
                .containsExactly(-80.0, 0.0);
        assertThat(routes.current("T").orElseThrow().reason()).isEqualTo("test");
    }

    @Test
    void storesNothingWhenAServiceRefusesOneRecordOfMany() {
        long journal = count("journal");
        List<String> told = refused(
                file("people.csv", PEOPLE + "T-1,Ida Testwell\nT 2,Bo Testwell\n"),
                file("routes.csv", ROUTES + "T,Test line,CHAINS,Down,Up,0m,2m,Single,no\n"),
                file("gradients.csv", GRADIENTS + "T,0m,1m,ONE_IN,80,SURVEYED,\nT,1m 10ch,2m,ONE_IN,0,SURVEYED,\n"));

        assertThat(told)
                .containsExactly(
                        "people.csv:3:staff_number crew.refused.staff-number",
                        "gradients.csv:3:value route.refused.one-in-zero",
                        "gradients.csv:3:from_measure route.refused.gap");
        assertThat(people.byStaffNumber("T-1")).isEmpty();
        assertThat(routes.current("T")).isEmpty();
        assertThat(count("journal")).isEqualTo(journal);
    }

    @Test
    void tellsMistakesOfAllFilesTogether() {
        List<String> told = refused(
                file("people.csv", PEOPLE + "T-1,=cmd()\n"),
                file("routes.csv", ROUTES + "T,Test line,FURLONGS,Down,Up,0m,2m,Single,no\n"),
                file("gradients.csv", GRADIENTS + "T,0m,ten,ONE_IN,80,SURVEYED,\nU,0m,1m,LEVEL,,GUESSED,\n"));

        assertThat(told)
                .containsExactlyInAnyOrder(
                        "people.csv:2:name exchange.refused.formula",
                        "routes.csv:2:measure_unit exchange.refused.word",
                        "gradients.csv:2:to_measure exchange.refused.measure",
                        "gradients.csv:3:origin exchange.refused.word",
                        "gradients.csv:3:route_code exchange.refused.no-owner");
    }

    @Test
    void saysOfAFigureWhichCellIsWrong() {
        List<String> told = refused(
                file("classes.csv", ImportFile.CLASSES.header() + "\nT9,Test class,,no,SHORT_TRAVEL,STEAM,VACUUM\n"),
                file(
                        "class-figures.csv",
                        ImportFile.CLASS_FIGURES.header() + "\n" + "T9,boiler_pressure,1800,psi,MAKERS,,yes\n"
                                + "T9,cylinder_bore,18,furlongs,MAKERS,,yes\n"
                                + "T9,whistle_pitch,440,,MAKERS,,yes\n"
                                + "T9,cylinder_stroke,26,in,UNKNOWN,,yes\n"));

        assertThat(told)
                .containsExactly(
                        "class-figures.csv:2:value stock.refused.out-of-range",
                        "class-figures.csv:3:unit stock.refused.unit-unknown",
                        "class-figures.csv:4:key stock.refused.figure-unknown",
                        "class-figures.csv:5:origin stock.refused.origin-missing");
        assertThat(classes.current("T9")).isEmpty();
    }

    @Test
    void refusesARecordGivenTwiceAndAPositionInTheWrongMeasure() {
        List<String> told = refused(file(
                "routes.csv",
                ROUTES + "T,One,KILOMETRES,Out,In,0,1.5,Single,no\nT,Two,KILOMETRES,Out,In,0,1m 20ch,Single,no\n"));

        assertThat(told)
                .containsExactlyInAnyOrder(
                        "routes.csv:3:code exchange.refused.twice",
                        "routes.csv:3:to_measure exchange.refused.measure-km");
    }

    @Test
    void refusesARestrictionOnARouteThatNobodyKnows() {
        List<String> told = refused(file(
                "restrictions.csv",
                ImportFile.RESTRICTIONS.header() + "\nT1,NONE,0m,1m,20,MPH,BOTH,D+0,00:00,D+3,23:59,test\n"));

        assertThat(told).containsExactly("restrictions.csv:2:route_code exchange.refused.route-unknown");
    }

    @Test
    @WithMockUser(roles = "INSPECTOR")
    void refusesRecordsThatThePostDoesNotAllow() {
        List<String> told = refused(file("people.csv", PEOPLE + "T-1,Ida Testwell\n"));

        assertThat(told).containsExactly("people.csv:0: exchange.refused.not-allowed");
        assertThat(people.byStaffNumber("T-1")).isEmpty();
    }

    private long count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Long.class).single();
    }

    private List<String> refused(Upload... files) {
        ImportRefusedException refused = catchThrowableOfType(
                ImportRefusedException.class, () -> importer.enter(new ArrayList<>(List.of(files)), "test"));
        assertThat(refused).isNotNull();
        return refused.problems().stream()
                .map(problem -> problem.file() + ":" + problem.line() + ":" + problem.column() + " " + problem.code())
                .toList();
    }

    private static Upload file(String name, String text) {
        return Upload.of(name, text.getBytes(UTF_8));
    }
}
