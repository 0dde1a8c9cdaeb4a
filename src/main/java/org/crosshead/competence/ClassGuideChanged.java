package org.crosshead.competence;

/** What is to be known of a class of engine is another now. */
record ClassGuideChanged(String classCode) {}
