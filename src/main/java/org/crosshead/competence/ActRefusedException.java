package org.crosshead.competence;

/** Something cannot be entered about what a person knows; the code names the message that says why and what would do. */
public class ActRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String code;

    public ActRefusedException(String code) {
        super(code);
        this.code = code;
    }

    public String code() {
        return code;
    }
}
