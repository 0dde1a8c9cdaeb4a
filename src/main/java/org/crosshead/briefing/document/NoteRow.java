package org.crosshead.briefing.document;

import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;

/** A class note that matters for this train. */
public record NoteRow(String className, NoteTopic topic, String text) {}
