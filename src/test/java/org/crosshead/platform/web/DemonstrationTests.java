package org.crosshead.platform.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.web.Browser.location;

import org.crosshead.platform.PlatformFixtures;
import org.crosshead.platform.account.DemonstrationAccounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;

/** What the demonstration adds: log-ins that everybody may read, and a mark on every page. */
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:demonstration-log-ins;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
class DemonstrationTests {

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private DemonstrationAccounts accounts;

    @Test
    void listsItsLogInsAndMarksThePage() throws Exception {
        String page = new Browser(port).get("/login").body();

        assertThat(page)
                .contains("Demonstration: an invented railway")
                .contains(">inspector<", ">manager<", ">assessor<", ">administrator<", ">driver<", ">fireman<")
                .contains("<code>demonstration</code>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"inspector", "manager", "assessor", "administrator", "driver", "fireman"})
    void letsEachPostIn(String subject) throws Exception {
        Browser browser = new Browser(port);

        assertThat(location(browser.logIn(subject, "demonstration"))).startsWith("/");
        assertThat(browser.get("/").statusCode()).isEqualTo(200);
        assertThat(browser.get("/").body()).contains("Demonstration: an invented railway");
    }

    @Test
    void joinsALogInToItsPersonOnceThatPersonIsThere() {
        jdbc.sql("update account set person_id = null where subject = 'driver'").update();
        long person = jdbc.sql("select id from person where staff_number = 'D-01'")
                .query(Long.class)
                .optional()
                .orElseGet(() -> PlatformFixtures.person(jdbc, "D-01", "Invented Driver"));
        accounts.make();
        accounts.make();

        assertThat(jdbc.sql("select person_id from account where subject = 'driver'")
                        .query(Long.class)
                        .single())
                .isEqualTo(person);
    }
}
