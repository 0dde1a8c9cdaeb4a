package org.crosshead.platform.security;

import static org.springframework.http.HttpMethod.GET;
import static org.springframework.http.HttpMethod.POST;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;

/**
 * Who may reach which endpoint: the one table that decides. The first rule that matches holds; what none matches is refused.
 *
 * <p>It lets people to the door of a page; what they may see behind it, such as a crew only its own briefings, the services
 * decide.
 */
public final class Endpoints {

    private static final String[] EVERY_POST = {"DRIVER", "FIREMAN", "INSPECTOR", "MANAGER", "ASSESSOR", "ADMINISTRATOR"
    };

    private static final List<EndpointRule> RULES = rules();

    private Endpoints() {}

    public static List<EndpointRule> table() {
        return RULES;
    }

    /** Returns the rule that decides about this path. */
    public static Optional<EndpointRule> ruleFor(HttpMethod method, String path) {
        PathContainer parsed = PathContainer.parsePath(path);
        return RULES.stream().filter(rule -> rule.matches(method, parsed)).findFirst();
    }

    /** Says whether somebody who holds these posts may read this page. */
    public static boolean mayRead(String path, Set<String> posts) {
        return ruleFor(GET, path).filter(rule -> rule.admits(posts)).isPresent();
    }

    private static List<EndpointRule> rules() {
        List<EndpointRule> rules = new ArrayList<>();
        open(rules);
        everyLogIn(rules);
        reading(rules);
        writing(rules);
        return List.copyOf(rules);
    }

    private static void open(List<EndpointRule> rules) {
        for (String pattern : List.of(
                "/login",
                "/error",
                "/actuator/health",
                "/actuator/info",
                "/service-worker.js",
                "/*.css",
                "/*.js",
                "/*.svg",
                "/*.ico",
                "/*.webmanifest",
                "/css/**",
                "/js/**",
                "/images/**")) {
            rules.add(EndpointRule.open(GET, pattern));
        }
        // A failed form comes to the error page by the method with which it was sent.
        rules.add(EndpointRule.open(POST, "/error"));
    }

    private static void everyLogIn(List<EndpointRule> rules) {
        rules.add(EndpointRule.everyLogIn(GET, "/password"));
        rules.add(EndpointRule.everyLogIn(POST, "/password"));
        rules.add(EndpointRule.everyLogIn(GET, "/logout"));
    }

    private static void reading(List<EndpointRule> rules) {
        for (String form : List.of("/trains/new", "/trains/*/edit")) {
            rules.add(EndpointRule.posts(GET, form, "INSPECTOR", "MANAGER"));
        }
        for (String form : List.of(
                "/routes/new",
                "/routes/*/edit",
                "/routes/*/junctions/new",
                "/restrictions/new",
                "/classes/new",
                "/classes/*/edit",
                "/engines/new",
                "/engines/*/edit",
                "/vehicles/new",
                "/vehicles/*/edit",
                "/formations/new",
                "/formations/*/edit")) {
            rules.add(EndpointRule.posts(GET, form, "INSPECTOR"));
        }
        rules.add(EndpointRule.posts(GET, "/briefings/*/by-hand", "INSPECTOR"));
        rules.add(EndpointRule.posts(GET, "/briefings/preparing/*", "INSPECTOR"));
        rules.add(EndpointRule.posts(GET, "/people/new", "MANAGER"));
        for (String pattern : List.of(
                "/",
                "/trains/**",
                "/routes/**",
                "/restrictions/**",
                "/classes/**",
                "/engines/**",
                "/vehicles/**",
                "/formations/**",
                "/loads",
                "/briefings/**")) {
            rules.add(EndpointRule.posts(GET, pattern, EVERY_POST));
        }
        for (String pattern : List.of("/knowledge", "/knowledge.csv", "/cover")) {
            rules.add(EndpointRule.posts(GET, pattern, "MANAGER", "INSPECTOR", "ASSESSOR", "ADMINISTRATOR"));
        }
        rules.add(EndpointRule.posts(GET, "/self-test/*/bank", "INSPECTOR", "ASSESSOR"));
        for (String pattern : List.of(
                "/knowledge/*",
                "/knowledge-policy",
                "/policy-figures",
                "/permits/*",
                "/sections",
                "/sections/*/card",
                "/self-test/**",
                "/learning",
                "/class-guides",
                "/refresh")) {
            rules.add(EndpointRule.posts(GET, pattern, EVERY_POST));
        }
        rules.add(EndpointRule.posts(GET, "/learning/*", "MANAGER", "INSPECTOR"));
        for (String pattern : List.of("/sections/new", "/sections/*/edit")) {
            rules.add(EndpointRule.posts(GET, pattern, "INSPECTOR"));
        }
        rules.add(EndpointRule.posts(GET, "/people/**", "MANAGER", "INSPECTOR", "ASSESSOR", "ADMINISTRATOR"));
        rules.add(EndpointRule.posts(GET, "/import/**", "INSPECTOR", "MANAGER"));
        rules.add(EndpointRule.posts(GET, "/journal", "INSPECTOR", "MANAGER", "ASSESSOR", "ADMINISTRATOR"));
        rules.add(EndpointRule.posts(GET, "/accounts/**", "ADMINISTRATOR"));
    }

    private static void writing(List<EndpointRule> rules) {
        for (String pattern : List.of(
                "/routes/**", "/restrictions/**", "/classes/**", "/engines/**", "/vehicles/**", "/formations/**")) {
            rules.add(EndpointRule.posts(POST, pattern, "INSPECTOR"));
        }
        rules.add(EndpointRule.posts(POST, "/trains/**", "INSPECTOR", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/briefings/*/acknowledgements", "DRIVER", "FIREMAN"));
        rules.add(EndpointRule.posts(POST, "/briefings/**", "INSPECTOR"));
        rules.add(EndpointRule.posts(POST, "/knowledge/*", EVERY_POST));
        rules.add(EndpointRule.posts(POST, "/knowledge-policy", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/knowledge-policy/*/approve", "MANAGER", "ASSESSOR", "INSPECTOR"));
        rules.add(EndpointRule.posts(POST, "/policy-figures/approve", "MANAGER", "ASSESSOR", "INSPECTOR"));
        rules.add(EndpointRule.posts(POST, "/self-test/*", EVERY_POST));
        for (String pattern : List.of("/self-test/*/bank", "/self-test/*/bank/*/withdraw")) {
            rules.add(EndpointRule.posts(POST, pattern, "INSPECTOR", "ASSESSOR"));
        }
        for (String pattern : List.of("/refresh", "/refresh/propose")) {
            rules.add(EndpointRule.posts(POST, pattern, "MANAGER"));
        }
        rules.add(EndpointRule.posts(POST, "/refresh/*/answer", "DRIVER", "FIREMAN"));
        rules.add(EndpointRule.posts(POST, "/permits/*/decline", "DRIVER", "FIREMAN"));
        rules.add(EndpointRule.posts(POST, "/permits/*/decide", EVERY_POST));
        rules.add(EndpointRule.posts(POST, "/permits/*/confirm", "MANAGER", "INSPECTOR"));
        rules.add(EndpointRule.posts(POST, "/permits/*/conducting", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/permits/*/conducting/*", EVERY_POST));
        for (String pattern : List.of("/permits/*/diversions", "/permits/*/diversions/*/remove")) {
            rules.add(EndpointRule.posts(POST, pattern, "MANAGER", "INSPECTOR"));
        }
        for (String pattern : List.of("/sections", "/sections/*/split", "/sections/*/merge")) {
            rules.add(EndpointRule.posts(POST, pattern, "INSPECTOR"));
        }
        rules.add(EndpointRule.posts(POST, "/sections/*/approve", "MANAGER", "ASSESSOR"));
        rules.add(EndpointRule.posts(POST, "/sections/*/close", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/sections/*/open", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/class-guides", "INSPECTOR"));
        rules.add(EndpointRule.posts(POST, "/class-guides/*/approve", "MANAGER", "ASSESSOR"));
        for (String pattern : List.of("/learning", "/learning/*/close", "/learning/*/book")) {
            rules.add(EndpointRule.posts(POST, pattern, "MANAGER", "INSPECTOR"));
        }
        for (String pattern : List.of("/learning/turns/*/tell", "/learning/turns/*/not-run")) {
            rules.add(EndpointRule.posts(POST, pattern, EVERY_POST));
        }
        rules.add(EndpointRule.posts(POST, "/people/**", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/import/**", "INSPECTOR", "MANAGER"));
        rules.add(EndpointRule.posts(POST, "/accounts/**", "ADMINISTRATOR"));
    }
}
