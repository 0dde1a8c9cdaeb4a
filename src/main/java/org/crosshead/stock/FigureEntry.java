package org.crosshead.stock;

import java.time.Instant;

/** A stored figure with who entered it in its present form, and when. For an accepted estimate: who accepted it. */
public record FigureEntry(SourcedFigure figure, Instant enteredAt, String enteredBy) {}
