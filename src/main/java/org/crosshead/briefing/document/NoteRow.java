package org.crosshead.briefing.document;

import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.jspecify.annotations.Nullable;

/**
 * A class note that matters for this train.
 *
 * @param text as entered; empty where the engine's own figures say it all
 * @param figures what was worked out for the topic; null for none and in documents of schema 2
 */
public record NoteRow(
        String className,
        NoteTopic topic,
        String text,
        @Nullable Phrase figures) {}
