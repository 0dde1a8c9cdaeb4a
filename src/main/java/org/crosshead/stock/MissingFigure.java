package org.crosshead.stock;

import org.crosshead.stock.figure.FigureSpec;
import org.jspecify.annotations.Nullable;

/**
 * A figure without which nothing can be worked out.
 *
 * @param subject code of the class or kind of vehicle that lacks it
 * @param spec which figure, and what it is needed for
 * @param estimate the estimate that waits for a person to accept it, or null where there is none
 */
public record MissingFigure(
        String subject, FigureSpec spec, @Nullable SourcedFigure estimate) {}
