package org.crosshead.platform.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;

/** Tells the page "not allowed" whether the posts or an old form were in the way. */
final class RefusalHandler implements AccessDeniedHandler {

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException {
        if (!response.isCommitted()) {
            request.setAttribute("staleForm", refusal instanceof CsrfException);
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }
}
