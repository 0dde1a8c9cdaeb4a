package org.crosshead.stock;

/**
 * An accepted estimate that counts in a result and is marked wherever it does.
 *
 * @param subject code of the class or kind of vehicle, or number of the engine, that it belongs to
 * @param figure the figure; its note is the rule in words
 */
public record EstimateUsed(String subject, SourcedFigure figure) {}
