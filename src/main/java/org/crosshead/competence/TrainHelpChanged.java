package org.crosshead.competence;

/** Who goes along with a train's crew, or where it may be diverted, is another now. */
record TrainHelpChanged(long trainId) {}
