package org.crosshead.stock;

import java.util.List;
import org.crosshead.kernel.resistance.ResistanceFamily;

/** A kind of carriage or wagon as somebody enters it: the content of one revision. */
public record VehicleKindDraft(
        String code,
        String name,
        ResistanceFamily family,
        BrakeKind brake,
        Bearing bearing,
        List<SourcedFigure> figures) {

    public VehicleKindDraft {
        figures = List.copyOf(figures);
    }

    /** A kind whose bearings nobody has noted. */
    public VehicleKindDraft(
            String code, String name, ResistanceFamily family, BrakeKind brake, List<SourcedFigure> figures) {
        this(code, name, family, brake, Bearing.UNKNOWN, figures);
    }
}
