package org.crosshead.platform.account;

import org.springframework.security.core.AuthenticationException;

/** Too many failed attempts to log in have been made lately from one place. */
public final class TooManyAttemptsException extends AuthenticationException {

    TooManyAttemptsException() {
        super("too many failed attempts to log in");
    }
}
