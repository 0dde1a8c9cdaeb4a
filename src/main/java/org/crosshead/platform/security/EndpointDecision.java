package org.crosshead.platform.security;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.function.Supplier;
import org.crosshead.platform.security.EndpointRule.Access;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;

/** Asks the table of endpoints about a request. */
final class EndpointDecision implements AuthorizationManager<RequestAuthorizationContext> {

    @Override
    public AuthorizationDecision authorize(
            Supplier<? extends @Nullable Authentication> authentication, RequestAuthorizationContext context) {
        HttpServletRequest request = context.getRequest();
        Optional<EndpointRule> rule =
                Endpoints.ruleFor(HttpMethod.valueOf(request.getMethod()), SecurityActor.path(request));
        return new AuthorizationDecision(rule.isPresent() && admits(rule.get(), authentication));
    }

    private static boolean admits(EndpointRule rule, Supplier<? extends @Nullable Authentication> authentication) {
        if (rule.access() == Access.OPEN) {
            return true;
        }
        Authentication present = authentication.get();
        return present != null
                && present.isAuthenticated()
                && !(present instanceof AnonymousAuthenticationToken)
                && rule.admits(SecurityActor.posts(present));
    }
}
