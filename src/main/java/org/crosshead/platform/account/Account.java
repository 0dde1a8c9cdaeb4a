package org.crosshead.platform.account;

import org.jspecify.annotations.Nullable;

/**
 * A log-in as it is stored.
 *
 * @param displayName name of its person, or its own where it has none
 * @param passwordHash null for a log-in whose password somebody else keeps
 */
record Account(
        long id,
        String subject,
        @Nullable String passwordHash,
        @Nullable Long personId,
        String displayName,
        boolean locked,
        boolean mustChangePassword,
        int version) {

    LogIn logIn() {
        return new LogIn(id, personId, subject, displayName, version, mustChangePassword);
    }
}
