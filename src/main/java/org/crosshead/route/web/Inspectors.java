package org.crosshead.route.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.access.AccessDeniedException;

/** Whom these pages let change a route; the services check it again. */
final class Inspectors {

    private Inspectors() {}

    static boolean mayEdit(HttpServletRequest request) {
        return request.isUserInRole("INSPECTOR");
    }

    /** Refuses everybody else the forms, which would be of no use to them. */
    static void only(HttpServletRequest request) {
        if (!mayEdit(request)) {
            throw new AccessDeniedException("only inspectors change routes");
        }
    }
}
