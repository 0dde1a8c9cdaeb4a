package org.crosshead.crew;

/** That a person or their posts have been entered or changed. */
public record PersonChanged(long personId) {}
