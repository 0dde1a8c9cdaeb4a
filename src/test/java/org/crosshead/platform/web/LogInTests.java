package org.crosshead.platform.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.web.Browser.location;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Map;
import org.crosshead.platform.PlatformFixtures;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;

/** Log-ins, sessions and refusals as a browser meets them, against the running service. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class LogInTests {

    private static final String PASSWORD = "a good long word";
    private static final String NEW_PASSWORD = "another good long word";

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PasswordEncoder encoder;

    private Browser browser;

    @BeforeEach
    void start() {
        for (String table : new String[] {"login_attempt", "account_role", "account", "person_post", "person"}) {
            jdbc.sql("delete from " + table).update();
        }
        browser = new Browser(port);
    }

    @Test
    void keepsTheSessionInACookieThatScriptsAndOtherSitesDoNotGet() throws Exception {
        String cookie = browser.get("/login").headers().firstValue("Set-Cookie").orElseThrow();

        assertThat(cookie).contains("HttpOnly").contains("SameSite=Lax").doesNotContain("Secure");
    }

    @Test
    void marksTheCookieSecureBehindAProxyWithTls() throws Exception {
        String cookie = browser.get("/login", "X-Forwarded-Proto", "https", "X-Forwarded-For", "192.0.2.9")
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow();

        assertThat(cookie).contains("Secure");
    }

    @Test
    void holdsTheBrowserToFilesOfThisService() throws Exception {
        HttpResponse<String> page = browser.get("/login");

        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'")
                .contains("script-src 'self'")
                .contains("frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(page.body()).doesNotContain(" style=").doesNotContain("<script");
        assertThat(page.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store");
    }

    @Test
    void givesTheStyleSheetToEverybody() throws Exception {
        HttpResponse<String> css = browser.get("/crosshead.css");

        assertThat(css.statusCode()).isEqualTo(200);
        assertThat(css.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void logsInAndShowsTheNavigationOfThePost() throws Exception {
        account("anna", "DRIVER", false);

        assertThat(location(browser.logIn(" Anna ", PASSWORD))).startsWith("/");
        HttpResponse<String> start = browser.get("/");

        assertThat(start.statusCode()).isEqualTo(200);
        assertThat(start.body())
                .contains("href=\"/trains\"")
                .doesNotContain("href=\"/accounts\"")
                .contains("Signals, the rule book")
                .doesNotContain("class=\"demonstration\"");
    }

    @Test
    void saysTheSameOfAWrongNameAWrongPasswordAndALock() throws Exception {
        long locked = account("locked", "DRIVER", false);
        jdbc.sql("update account set locked = true where id = ?").param(locked).update();
        account("anna", "DRIVER", false);

        assertThat(location(browser.logIn("nobody", PASSWORD))).isEqualTo("/login?failed");
        assertThat(location(browser.logIn("anna", "wrong"))).isEqualTo("/login?failed");
        assertThat(location(browser.logIn("locked", PASSWORD))).isEqualTo("/login?failed");
        assertThat(location(browser.logIn("anna", "x".repeat(5000)))).isEqualTo("/login?failed");
    }

    @Test
    void refusesTheSixthAttemptEvenWithTheRightPassword() throws Exception {
        account("anna", "DRIVER", false);
        for (int attempt = 0; attempt < 5; attempt++) {
            browser.logIn("anna", "wrong");
        }

        assertThat(location(browser.logIn("anna", PASSWORD))).isEqualTo("/login?throttled");
        assertThat(browser.get("/login?throttled").body()).contains("Wait 15 minutes");
    }

    @Test
    void doesNotBelieveAForwardedAddressThatPassesThroughTheProxy() throws Exception {
        account("anna", "DRIVER", false);
        for (int attempt = 0; attempt < 5; attempt++) {
            browser.logIn("anna", "wrong");
        }

        assertThat(jdbc.sql("select count(distinct address) from login_attempt")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void showsAClearPageForAFormWithoutToken() throws Exception {
        account("anna", "INSPECTOR", false);
        browser.logIn("anna", PASSWORD);

        HttpResponse<String> refused = browser.postWithoutToken("/trains", Map.of("number", "1"));

        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(refused.body()).contains("The form was too old").doesNotContain("Exception");
    }

    @Test
    void saysThatAFileIsTooLarge() throws Exception {
        account("anna", "MANAGER", false);
        browser.logIn("anna", PASSWORD);

        HttpResponse<String> refused = browser.upload("/logout", "/import/a/b/c/d", "x".repeat(7_000_000));
        HttpResponse<String> readable = browser.upload("/logout", "/import/a/b/c/d", "x".repeat(3_000_000));

        assertThat(refused.statusCode()).isEqualTo(413);
        assertThat(refused.body()).contains("The file is too large");
        assertThat(readable.statusCode()).as("read, but there is no such page").isEqualTo(404);
    }

    @Test
    void showsAClearPageForWhatThePostsDoNotAllow() throws Exception {
        account("anna", "DRIVER", false);
        browser.logIn("anna", PASSWORD);

        HttpResponse<String> refused = browser.get("/accounts");

        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(refused.body())
                .contains("Your posts of today do not allow this")
                .contains("href=\"/trains\"");
    }

    @Test
    void showsAClearPageForWhatIsNotThere() throws Exception {
        account("anna", "DRIVER", false);
        browser.logIn("anna", PASSWORD);

        HttpResponse<String> missing = browser.get("/trains/a/b/c/d");

        assertThat(missing.statusCode()).isEqualTo(404);
        assertThat(missing.body()).contains("There is no such page").doesNotContain("Exception");
    }

    @Test
    void takesAPostAwayWithinTheSession() throws Exception {
        long anna = PlatformFixtures.person(jdbc, "T-1", "Anna Example");
        PlatformFixtures.post(jdbc, anna, "ASSESSOR", LocalDate.EPOCH, null);
        long account = account("anna", null, false);
        jdbc.sql("update account set person_id = ? where id = ?")
                .params(anna, account)
                .update();
        browser.logIn("anna", PASSWORD);
        assertThat(browser.get("/journal").statusCode()).isEqualTo(200);

        jdbc.sql("delete from person_post").update();

        assertThat(browser.get("/journal").statusCode()).isEqualTo(403);
    }

    @Test
    void endsTheSessionOfALogInThatIsLocked() throws Exception {
        long account = account("anna", "DRIVER", false);
        browser.logIn("anna", PASSWORD);
        assertThat(browser.get("/").statusCode()).isEqualTo(200);

        jdbc.sql("update account set locked = true, version = version + 1 where id = ?")
                .param(account)
                .update();

        assertThat(location(browser.get("/"))).isEqualTo("/login?ended");
        assertThat(location(browser.get("/"))).isEqualTo("/login");
    }

    @Test
    void leadsFromTheOneTimePasswordToOnesOwn() throws Exception {
        account("anna", "DRIVER", true);
        browser.logIn("anna", PASSWORD);
        Browser elsewhere = new Browser(port);
        elsewhere.logIn("anna", PASSWORD);
        assertThat(location(browser.get("/"))).isEqualTo("/password");

        HttpResponse<String> tooShort = change("short");
        assertThat(tooShort.statusCode()).isEqualTo(422);
        assertThat(tooShort.body()).contains("The new password is too short");
        HttpResponse<String> changed = change(NEW_PASSWORD);

        assertThat(changed.statusCode()).isEqualTo(303);
        HttpResponse<String> start = browser.get("/");
        assertThat(start.statusCode()).isEqualTo(200);
        assertThat(start.body()).contains("The password is changed.");
        assertThat(location(elsewhere.get("/"))).isEqualTo("/login?ended");
        assertThat(location(new Browser(port).logIn("anna", PASSWORD))).isEqualTo("/login?failed");
        assertThat(location(new Browser(port).logIn("anna", NEW_PASSWORD))).startsWith("/");
    }

    @Test
    void logsOut() throws Exception {
        account("anna", "DRIVER", false);
        browser.logIn("anna", PASSWORD);

        assertThat(location(browser.post("/logout", "/logout", Map.of()))).isEqualTo("/login?left");
        assertThat(location(browser.get("/"))).isEqualTo("/login");
    }

    private HttpResponse<String> change(String chosen) throws Exception {
        return browser.post(
                "/password", "/password", Map.of("present", PASSWORD, "chosen", chosen, "repeated", chosen));
    }

    private long account(String subject, @Nullable String role, boolean mustChange) {
        jdbc.sql("""
                        insert into account (provider, subject, password_hash, display_name, locked,
                            must_change_password, version)
                        values ('password', ?, ?, ?, false, ?, 0)
                        """)
                .params(subject, encoder.encode(PASSWORD), "Invented " + subject, mustChange)
                .update();
        long id = jdbc.sql("select id from account where subject = ?")
                .param(subject)
                .query(Long.class)
                .single();
        if (role != null) {
            jdbc.sql("insert into account_role (account_id, role) values (?, ?)")
                    .params(id, role)
                    .update();
        }
        return id;
    }
}
