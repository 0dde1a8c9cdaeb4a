package org.crosshead.platform.account;

/** What was asked of a log-in is not done; field and code say what is wrong and what would do. */
public final class AccountRefusedException extends RuntimeException {

    private final String field;
    private final String code;

    AccountRefusedException(String field, String code) {
        super(field + ": " + code);
        this.field = field;
        this.code = code;
    }

    public String field() {
        return field;
    }

    public String code() {
        return code;
    }
}
