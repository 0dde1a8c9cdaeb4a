package org.crosshead.platform.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.MockMvc;

/**
 * Sends requests as each post through the whole chain of filters. The addresses lie deeper than any page, so that being let
 * in shows as "not found", whatever the pages themselves would say.
 */
@SpringBootTest
@AutoConfigureMockMvc
class AccessByPostTests {

    private static final List<String> POSTS =
            List.of("DRIVER", "FIREMAN", "INSPECTOR", "MANAGER", "ASSESSOR", "ADMINISTRATOR");

    /** Method, address and the posts let in, written out apart from the table that decides. */
    private static final String EXPECTED = """
            GET  /trains/a/b/c/d          DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /trains/new              INSPECTOR MANAGER
            GET  /trains/0/edit           INSPECTOR MANAGER
            GET  /classes/new             INSPECTOR
            GET  /engines/0/edit          INSPECTOR
            GET  /people/new              MANAGER
            GET  /routes/a/b/c/d          DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /restrictions/a/b/c/d    DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /classes/a/b/c/d         DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /engines/a/b/c/d         DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /vehicles/a/b/c/d        DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /formations/a/b/c/d      DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /briefings/a/b/c/d       DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /loads                   DRIVER FIREMAN INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /people/a/b/c/d          INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            GET  /import/a/b/c/d          INSPECTOR MANAGER
            GET  /accounts/a/b/c/d        ADMINISTRATOR
            GET  /journal                 INSPECTOR MANAGER ASSESSOR ADMINISTRATOR
            POST /routes/a/b/c/d          INSPECTOR
            POST /restrictions/a/b/c/d    INSPECTOR
            POST /classes/a/b/c/d         INSPECTOR
            POST /engines/a/b/c/d         INSPECTOR
            POST /vehicles/a/b/c/d        INSPECTOR
            POST /formations/a/b/c/d      INSPECTOR
            POST /trains/a/b/c/d          INSPECTOR MANAGER
            POST /briefings/a/b/c/d       INSPECTOR
            POST /people/a/b/c/d          MANAGER
            POST /import/a/b/c/d          INSPECTOR MANAGER
            POST /accounts/a/b/c/d        ADMINISTRATOR
            POST /journal                 nobody
            GET  /actuator/env            nobody
            GET  /unheard-of              nobody
            PUT  /trains/a/b/c/d          nobody
            """;

    @Autowired
    private MockMvc mvc;

    static Stream<Arguments> endpointsByPost() {
        return EXPECTED.lines()
                .map(line -> line.split("\\s+", -1))
                .flatMap(words -> POSTS.stream()
                        .map(post -> Arguments.of(
                                words[0],
                                words[1],
                                post,
                                Set.copyOf(Arrays.asList(words)).contains(post))));
    }

    @ParameterizedTest(name = "{0} {1} as {2}: {3}")
    @MethodSource("endpointsByPost")
    void letsInWhomTheTableNames(String method, String path, String post, boolean letIn) throws Exception {
        int status = mvc.perform(request(HttpMethod.valueOf(method), path)
                        .with(user("somebody").roles(post))
                        .with(csrf()))
                .andReturn()
                .getResponse()
                .getStatus();

        assertThat(status == 403).isEqualTo(!letIn);
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void sendsEverybodyElseToTheLogIn(String path) throws Exception {
        mvc.perform(request(HttpMethod.GET, path)).andExpect(redirectedUrl("/login"));
    }

    static Stream<String> addresses() {
        return Stream.concat(
                Stream.of("/", "/password", "/logout"),
                EXPECTED.lines().filter(line -> line.startsWith("GET")).map(line -> line.split("\\s+", -1)[1]));
    }

    @Test
    void letsOnlyCrewAcknowledge() {
        EndpointRule rule = Endpoints.ruleFor(HttpMethod.POST, "/briefings/7/acknowledgements")
                .orElseThrow();

        assertThat(rule.posts()).containsExactlyInAnyOrder("DRIVER", "FIREMAN");
    }

    @Test
    void refusesAFormWithoutToken() throws Exception {
        int status = mvc.perform(request(HttpMethod.POST, "/trains/a/b/c/d")
                        .with(user("somebody").roles("INSPECTOR")))
                .andReturn()
                .getResponse()
                .getStatus();

        assertThat(status).isEqualTo(403);
    }

    @Test
    void showsNoPageToALogInWithoutAnyPost() throws Exception {
        int status = mvc.perform(request(HttpMethod.GET, "/trains/a/b/c/d")
                        .with(user("somebody").roles()))
                .andReturn()
                .getResponse()
                .getStatus();

        assertThat(status).isEqualTo(403);
    }
}
