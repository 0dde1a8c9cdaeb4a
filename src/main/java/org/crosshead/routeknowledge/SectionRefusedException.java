package org.crosshead.routeknowledge;

/** Something about a section cannot be; the code names the message that says why. */
public class SectionRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String code;

    public SectionRefusedException(String code) {
        super(code);
        this.code = code;
    }

    public String code() {
        return code;
    }
}
