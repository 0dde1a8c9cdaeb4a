package org.crosshead.competence;

/** Something was entered about what a person knows, or what they work besides their trains. */
public record KnowledgeChanged(long personId) {}
