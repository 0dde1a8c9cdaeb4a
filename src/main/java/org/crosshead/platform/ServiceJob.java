package org.crosshead.platform;

import java.util.Set;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;

/** Work that the service does by itself, outside any request, in the name {@value #NAME} and with the posts it needs. */
public final class ServiceJob {

    /** Name of the actor where nobody is logged in. */
    public static final String NAME = "crosshead";

    private ServiceJob() {}

    /**
     * Does the work in this thread as the service itself; afterwards the thread acts for whom it did before.
     *
     * @param posts posts whose rights the work needs, in capitals
     */
    public static void run(Set<String> posts, Runnable work) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContext during = SecurityContextHolder.createEmptyContext();
        String[] roles = posts.stream().map(post -> "ROLE_" + post).sorted().toArray(String[]::new);
        during.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                NAME, null, AuthorityUtils.createAuthorityList(roles)));
        SecurityContextHolder.setContext(during);
        try {
            work.run();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }
}
