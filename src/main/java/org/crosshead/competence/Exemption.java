package org.crosshead.competence;

/** What lifts a rule for a train, by name, where the policy takes it. */
enum Exemption {
    /** Easy grades, and a short or slow stretch: {@link EasyGrades}. */
    EASY_GRADES("easy-grades");

    private final String code;

    Exemption(String code) {
        this.code = code;
    }

    /** Returns the end of the code of its message. */
    String code() {
        return code;
    }
}
