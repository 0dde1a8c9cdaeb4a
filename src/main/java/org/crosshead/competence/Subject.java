package org.crosshead.competence;

/**
 * What a person signs.
 *
 * @param code of the section of a route, or of the class of engine
 */
public record Subject(Kind kind, String code) implements Comparable<Subject> {

    /** What is known: a road, or an engine. */
    public enum Kind {
        SECTION,
        CLASS
    }

    @Override
    public int compareTo(Subject other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : code.compareTo(other.code);
    }
}
