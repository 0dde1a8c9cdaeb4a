package org.crosshead.platform.account;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.AuthenticatedPrincipal;

/**
 * A log-in in use, as a session keeps it: no password, no posts, which are read anew with every request.
 *
 * @param personId the person whose it is, or null if it belongs to nobody in the list of people
 * @param subject what is typed to log in
 * @param version of the account when the session began; a lock or a new password makes it out of date
 */
public record LogIn(
        long accountId,
        @Nullable Long personId,
        String subject,
        String displayName,
        int version,
        boolean mustChangePassword)
        implements AuthenticatedPrincipal, Serializable {

    @Override
    public String getName() {
        return subject;
    }
}
