package org.crosshead.briefing;

import java.time.LocalDate;
import org.crosshead.platform.Origin;

/**
 * A policy figure as a person enters it.
 *
 * @param value in the unit in which the figure is kept
 * @param origin where it came from; an own rule is an estimate
 * @param source what it rests on
 * @param validFrom day from which it holds
 */
public record PolicyDraft(String key, double value, Origin origin, String source, String owner, LocalDate validFrom) {}
