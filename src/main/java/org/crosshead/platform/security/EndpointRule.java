package org.crosshead.platform.security;

import java.util.Collections;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * A row of the table of endpoints. A rule for reading holds for GET and HEAD.
 *
 * @param posts of which one is needed; looked at only for {@link Access#POSTS}
 */
public record EndpointRule(HttpMethod method, PathPattern pattern, Access access, Set<String> posts) {

    /** Whom a rule lets in. */
    public enum Access {
        OPEN,
        EVERY_LOG_IN,
        POSTS
    }

    public EndpointRule {
        posts = Set.copyOf(posts);
    }

    static EndpointRule open(HttpMethod method, String pattern) {
        return new EndpointRule(method, parsed(pattern), Access.OPEN, Set.of());
    }

    static EndpointRule everyLogIn(HttpMethod method, String pattern) {
        return new EndpointRule(method, parsed(pattern), Access.EVERY_LOG_IN, Set.of());
    }

    static EndpointRule posts(HttpMethod method, String pattern, String... posts) {
        return new EndpointRule(method, parsed(pattern), Access.POSTS, Set.of(posts));
    }

    /** Says whether somebody logged in with these posts is let in. */
    public boolean admits(Set<String> held) {
        return access != Access.POSTS || !Collections.disjoint(posts, held);
    }

    boolean matches(HttpMethod asked, PathContainer path) {
        boolean reading = method.equals(HttpMethod.GET) && asked.equals(HttpMethod.HEAD);
        return (reading || method.equals(asked)) && pattern.matches(path);
    }

    private static PathPattern parsed(String pattern) {
        return PathPatternParser.defaultInstance.parse(pattern);
    }
}
