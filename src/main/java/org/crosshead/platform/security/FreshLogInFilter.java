package org.crosshead.platform.security;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.crosshead.platform.account.LogIn;
import org.crosshead.platform.account.PostsOfToday;
import org.crosshead.platform.security.EndpointRule.Access;
import org.springframework.http.HttpMethod;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.authentication.logout.SecurityContextLogoutHandler;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives every request the posts of today, ends the session of a log-in that was locked or has another password, and leads
 * somebody with a one-time password to choose their own before anything else.
 */
final class FreshLogInFilter extends OncePerRequestFilter {

    private static final Set<String> BEFORE_CHANGE = Set.of("/password", "/logout");

    private final PostsOfToday posts;

    FreshLogInFilter(PostsOfToday posts) {
        this.posts = posts;
    }

    /** What is open to everybody needs no session, and reading one from the database for a style sheet would be waste. */
    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = SecurityActor.path(request);
        return !path.equals("/error")
                && Endpoints.ruleFor(HttpMethod.valueOf(request.getMethod()), path)
                        .filter(rule -> rule.access() == Access.OPEN)
                        .isPresent();
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication present = SecurityContextHolder.getContext().getAuthentication();
        if (present == null || !(present.getPrincipal() instanceof LogIn logIn)) {
            chain.doFilter(request, response);
            return;
        }
        Optional<Authentication> renewed = posts.renewed(logIn);
        if (renewed.isEmpty()) {
            new SecurityContextLogoutHandler().logout(request, response, present);
            response.sendRedirect(request.getContextPath() + "/login?ended");
        } else if (mustChangeFirst(renewed.get(), request)) {
            response.sendRedirect(request.getContextPath() + "/password");
        } else {
            SecurityContext context = SecurityContextHolder.createEmptyContext();
            context.setAuthentication(renewed.get());
            SecurityContextHolder.setContext(context);
            chain.doFilter(request, response);
        }
    }

    private static boolean mustChangeFirst(Authentication renewed, HttpServletRequest request) {
        return request.getDispatcherType() == DispatcherType.REQUEST
                && renewed.getPrincipal() instanceof LogIn logIn
                && logIn.mustChangePassword()
                && !BEFORE_CHANGE.contains(SecurityActor.path(request));
    }
}
