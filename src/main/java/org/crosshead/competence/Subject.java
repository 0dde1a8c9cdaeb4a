package org.crosshead.competence;

import java.util.List;

/**
 * What a person signs, or must have to drive at all.
 *
 * @param code of the section of a route, or of the class of engine; of a person one of {@link #PERSONAL}
 */
public record Subject(Kind kind, String code) implements Comparable<Subject> {

    /** What is known: a road, or an engine. */
    public enum Kind {
        SECTION,
        CLASS,
        /** Of the person alone: a licence, a medical outcome. */
        PERSON
    }

    public static final Subject LICENCE = new Subject(Kind.PERSON, "LICENCE");
    public static final Subject MEDICAL = new Subject(Kind.PERSON, "MEDICAL");

    /** Observed at work in every calendar year. */
    public static final Subject OBSERVED = new Subject(Kind.PERSON, "OBSERVED");

    /** Tested unannounced in every calendar year. */
    public static final Subject TESTED = new Subject(Kind.PERSON, "TESTED");

    /** All that a person has besides roads and classes. */
    public static final List<Subject> PERSONAL = List.of(LICENCE, MEDICAL, OBSERVED, TESTED);

    @Override
    public int compareTo(Subject other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : code.compareTo(other.code);
    }
}
