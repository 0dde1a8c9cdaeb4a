package org.crosshead.platform.account;

import java.io.Serializable;

/** A password that lets somebody in once, to choose their own. */
public record OneTimePassword(String subject, String password) implements Serializable {

    /** Keeps the password out of logs. */
    @Override
    public String toString() {
        return "OneTimePassword[" + subject + "]";
    }
}
