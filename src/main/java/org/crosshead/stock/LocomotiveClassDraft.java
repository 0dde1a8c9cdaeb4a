package org.crosshead.stock;

import java.util.List;
import org.crosshead.kernel.traction.ValveFamily;

/**
 * A class of engines as somebody enters it: the content of one revision.
 *
 * @param tenderEngine false for a tank engine, which has a bunker
 * @param engineBrake brake on the engine itself
 * @param trainBrake brake it works on the train: VACUUM, AIR or NONE
 */
public record LocomotiveClassDraft(
        String code,
        String name,
        String description,
        boolean tenderEngine,
        ValveFamily valveFamily,
        BrakeKind engineBrake,
        BrakeKind trainBrake,
        List<SourcedFigure> figures,
        List<ClassNote> notes) {

    public LocomotiveClassDraft {
        figures = List.copyOf(figures);
        notes = List.copyOf(notes);
    }

    /** A note for the crew on one topic. */
    public record ClassNote(NoteTopic topic, String text) {}

    /** What class notes are about, in the order in which a crew needs them. */
    public enum NoteTopic {
        CONTROLS,
        PREPARING,
        STARTING,
        CYLINDER_COCKS,
        EJECTORS,
        SHORT_MOVEMENTS,
        DISLIKES,
        DISPOSAL
    }
}
