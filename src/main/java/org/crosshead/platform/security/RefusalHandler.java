package org.crosshead.platform.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.util.unit.DataSize;

/**
 * Tells the error pages what was in the way: the posts, an old form, or a file so large that the form around it, and with it
 * the form's token, was not read.
 */
final class RefusalHandler implements AccessDeniedHandler {

    private final DataSize requestSizeMax;

    RefusalHandler(DataSize requestSizeMax) {
        this.requestSizeMax = requestSizeMax;
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException {
        if (response.isCommitted()) {
            return;
        }
        boolean withoutToken = refusal instanceof CsrfException;
        if (withoutToken && request.getContentLengthLong() > requestSizeMax.toBytes()) {
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
        } else {
            request.setAttribute("staleForm", withoutToken);
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }
}
