package org.crosshead.platform.account;

/** What somebody types to change their password. */
public record PasswordChange(String present, String chosen, String repeated) {

    /** Keeps the passwords out of logs. */
    @Override
    public String toString() {
        return "PasswordChange[]";
    }
}
