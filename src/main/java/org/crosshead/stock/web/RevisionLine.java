package org.crosshead.stock.web;

/** A revision in words: its number, when and by whom it was made, and why. */
record RevisionLine(int number, String on, String by, String reason) {}
