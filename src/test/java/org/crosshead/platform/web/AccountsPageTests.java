package org.crosshead.platform.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.platform.PlatformFixtures.loggedIn;
import static org.crosshead.platform.PlatformFixtures.person;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import jakarta.servlet.http.Cookie;
import java.util.Objects;
import org.crosshead.platform.account.LogIn;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.annotation.Transactional;

/** The pages of log-ins and journal as an administrator meets them. */
@SpringBootTest
@AutoConfigureMockMvc
@Transactional
class AccountsPageTests {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private LogIn administrator;
    private long annaId;

    @BeforeEach
    void people() {
        long id = jdbc.sql("select id from account where subject = 'administrator'")
                .query(Long.class)
                .single();
        administrator = new LogIn(id, null, "administrator", "Administrator", 0, false);
        jdbc.sql("update account set must_change_password = false").update();
        annaId = person(jdbc, "T-1", "Anna <script>alert(1)</script>");
    }

    @Test
    void makesALogInAndShowsItsPasswordOnce() throws Exception {
        MvcResult made = ask(post("/accounts").param("subject", "Anna.1").param("personId", String.valueOf(annaId)));
        assertThat(made.getResponse().getStatus()).isEqualTo(303);
        Cookie session = Objects.requireNonNull(made.getResponse().getCookie("SESSION"));

        String first = body(ask(get("/accounts").cookie(session)));
        String again = body(ask(get("/accounts").cookie(session)));

        assertThat(first)
                .contains("The log-in is made.", "One-time password for anna.1:", "waits for its own password")
                .contains("Anna &lt;script&gt;")
                .doesNotContain("<script");
        assertThat(again).doesNotContain("One-time password for");
        assertThat(journal()).contains("Log-in made for staff number T-1");
    }

    @Test
    void saysBesideTheFieldWhatIsWrong() throws Exception {
        String bad = body(ask(post("/accounts").param("subject", "a b").param("personId", String.valueOf(annaId))));
        String nobody = body(ask(post("/accounts").param("subject", "anna")));
        String taken = body(
                ask(post("/accounts").param("subject", "administrator").param("personId", String.valueOf(annaId))));

        assertThat(bad).contains("The log-in name does not do", "value=\"a b\"");
        assertThat(nobody).contains("class=\"problem\">Choose a person");
        assertThat(taken).contains("Another log-in has this name");
        assertThat(jdbc.sql("select count(*) from account").query(Long.class).single())
                .isEqualTo(1);
    }

    @Test
    void locksUnlocksAndResetsAnother() throws Exception {
        ask(post("/accounts").param("subject", "anna").param("personId", String.valueOf(annaId)));
        long id = jdbc.sql("select id from account where subject = 'anna'")
                .query(Long.class)
                .single();

        ask(post("/accounts/" + id + "/lock").param("locked", "true"));
        assertThat(body(ask(get("/accounts")))).contains(">locked<");
        ask(post("/accounts/" + id + "/lock").param("locked", "false"));
        assertThat(body(ask(get("/accounts")))).doesNotContain(">locked<");
        MvcResult reset = ask(post("/accounts/" + id + "/reset"));

        assertThat(reset.getFlashMap().get("done")).isEqualTo("platform.accounts.reset.done");
        assertThat(jdbc.sql("select version from account where id = ?")
                        .param(id)
                        .query(Integer.class)
                        .single())
                .isEqualTo(3);
        assertThat(journal()).contains("account.locked", "account.unlocked", "account.reset");
    }

    @Test
    void doesNotLetAnAdministratorLockThemselvesOut() throws Exception {
        MvcResult refused =
                ask(post("/accounts/" + administrator.accountId() + "/lock").param("locked", "true"));

        assertThat(refused.getFlashMap().get("problemCode")).isEqualTo("platform.accounts.own");
        assertThat(jdbc.sql("select locked from account").query(Boolean.class).single())
                .isFalse();
    }

    @Test
    void answersNotFoundForALogInThatIsNotThere() throws Exception {
        assertThat(ask(post("/accounts/4711/reset")).getResponse().getStatus()).isEqualTo(404);
        assertThat(ask(post("/accounts/none/reset")).getResponse().getStatus()).isEqualTo(400);
    }

    @Test
    void showsTheStartPageByPost() throws Exception {
        String start = mvc.perform(get("/").with(user("somebody").roles("INSPECTOR", "DRIVER")))
                .andReturn()
                .getResponse()
                .getContentAsString();

        assertThat(start).contains("traction inspector", "driver", "href=\"/journal\"", "aria-current=\"page\"");
    }

    private String journal() throws Exception {
        return body(ask(get("/journal")));
    }

    private MvcResult ask(MockHttpServletRequestBuilder request) throws Exception {
        return mvc.perform(request.with(authentication(loggedIn(administrator, "ADMINISTRATOR")))
                        .with(csrf()))
                .andReturn();
    }

    private static String body(MvcResult result) throws Exception {
        return result.getResponse().getContentAsString();
    }
}
