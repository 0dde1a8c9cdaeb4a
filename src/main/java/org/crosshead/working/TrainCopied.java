package org.crosshead.working;

/** A train was made as a copy of another; whoever keeps something with a train may take it along. */
public record TrainCopied(long fromId, long toId) {}
