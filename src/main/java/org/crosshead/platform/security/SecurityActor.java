package org.crosshead.platform.security;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import java.util.stream.Collectors;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.ServiceJob;
import org.crosshead.platform.account.LogIn;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** The actor of whom Spring Security knows; where it knows of nobody, the service itself acts. */
@Component
class SecurityActor implements CurrentActor {

    private static final String ROLE = "ROLE_";

    @Override
    public Actor get() {
        Authentication present = SecurityContextHolder.getContext().getAuthentication();
        if (present == null || present instanceof AnonymousAuthenticationToken) {
            return new Actor(ServiceJob.NAME);
        }
        if (present.getPrincipal() instanceof LogIn logIn) {
            return new Actor(logIn.accountId(), logIn.personId(), logIn.displayName(), posts(present));
        }
        return new Actor(null, null, present.getName(), posts(present));
    }

    static Set<String> posts(Authentication authentication) {
        return authentication.getAuthorities().stream()
                .map(authority -> String.valueOf(authority.getAuthority()))
                .filter(authority -> authority.startsWith(ROLE))
                .map(authority -> authority.substring(ROLE.length()))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Returns the path asked for, without the context path, as the table of endpoints writes it. */
    static String path(HttpServletRequest request) {
        return request.getRequestURI().substring(request.getContextPath().length());
    }
}
