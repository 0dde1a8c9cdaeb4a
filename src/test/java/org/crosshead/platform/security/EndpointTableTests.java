package org.crosshead.platform.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.HttpMethod;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Walks every handler of the service against the table of endpoints: what is not listed there fails here. */
@SpringBootTest
@AutoConfigureMockMvc
class EndpointTableTests {

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping handlers;

    @Test
    void listsEveryHandler() {
        List<String> unlisted = new ArrayList<>();
        handlers.getHandlerMethods().forEach((mapping, handler) -> {
            for (String pattern : mapping.getPatternValues()) {
                for (HttpMethod method : methods(mapping)) {
                    if (Endpoints.ruleFor(method, sample(pattern)).isEmpty()) {
                        unlisted.add(method + " " + pattern + " of " + handler.getShortLogMessage());
                    }
                }
            }
        });

        assertThat(handlers.getHandlerMethods()).hasSizeGreaterThan(8);
        assertThat(unlisted).isEmpty();
    }

    @Test
    void opensNothingButWhatNeedsNoLogIn() {
        Set<String> open = new TreeSet<>();
        handlers.getHandlerMethods()
                .keySet()
                .forEach(mapping -> mapping.getPatternValues()
                        .forEach(pattern -> methods(mapping)
                                .forEach(method -> Endpoints.ruleFor(method, sample(pattern))
                                        .filter(rule -> rule.access() == EndpointRule.Access.OPEN)
                                        .ifPresent(rule -> open.add(method + " " + pattern)))));

        assertThat(open).isSubsetOf("GET /login", "GET /error", "POST /error", "GET /service-worker.js");
    }

    @Test
    void refusesWhatItDoesNotList() {
        assertThat(Endpoints.ruleFor(HttpMethod.GET, "/unheard-of")).isEmpty();
        assertThat(Endpoints.ruleFor(HttpMethod.DELETE, "/trains/1")).isEmpty();
        assertThat(Endpoints.ruleFor(HttpMethod.POST, "/journal")).isEmpty();
        assertThat(Endpoints.ruleFor(HttpMethod.GET, "/actuator/env")).isEmpty();
    }

    /** A handler without stated method is one for pages and forms. */
    private static List<HttpMethod> methods(RequestMappingInfo mapping) {
        Set<RequestMethod> stated = mapping.getMethodsCondition().getMethods();
        return stated.isEmpty()
                ? List.of(HttpMethod.GET, HttpMethod.POST)
                : stated.stream().map(RequestMethod::asHttpMethod).toList();
    }

    private static String sample(String pattern) {
        return pattern.replaceAll("\\{[^/]*}", "1").replace("**", "1").replace("*", "1");
    }
}
