package org.crosshead.briefing;

import java.util.List;

/** A policy figure cannot be; the code names the message that says why. */
public class PolicyRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String code;
    private final String field;
    private final List<String> args;

    PolicyRefusedException(String field, String code, List<String> args) {
        super(code);
        this.code = code;
        this.field = field;
        this.args = List.copyOf(args);
    }

    public String code() {
        return code;
    }

    /** Returns which part of the draft is wrong. */
    public String field() {
        return field;
    }

    public List<String> args() {
        return args;
    }
}
