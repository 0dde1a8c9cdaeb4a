package org.crosshead.working;

/** A train was entered, changed or cancelled. */
public record TrainRevised(long trainId) {}
