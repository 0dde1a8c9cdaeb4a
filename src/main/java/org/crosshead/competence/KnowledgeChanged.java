package org.crosshead.competence;

/** Something was entered about what a person knows. */
public record KnowledgeChanged(long personId) {}
