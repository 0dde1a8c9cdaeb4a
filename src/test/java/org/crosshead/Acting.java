package org.crosshead;

import org.crosshead.platform.account.LogIn;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;

/** Does something as one person of the railway, logged in with one post. */
public final class Acting {

    private static final long ACCOUNT = 99;

    private Acting() {}

    /** Returns the log-in of a person. */
    public static Authentication of(long personId, String post) {
        LogIn logIn = new LogIn(ACCOUNT, personId, "somebody", "Somebody", 1, false);
        return UsernamePasswordAuthenticationToken.authenticated(
                logIn, null, AuthorityUtils.createAuthorityList("ROLE_" + post));
    }

    /** Does something as that person, and is whoever it was before afterwards. */
    public static void as(long personId, String post, Runnable work) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContextHolder.setContext(new SecurityContextImpl(of(personId, post)));
        try {
            work.run();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }
}
