package org.crosshead.platform.account;

import java.util.Set;

/** A log-in as the administrator sees it. */
public record AccountRow(
        long id,
        String subject,
        String displayName,
        boolean hasPerson,
        boolean locked,
        boolean mustChangePassword,
        Set<String> posts) {}
