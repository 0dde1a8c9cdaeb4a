package org.crosshead.briefing.web;

import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.SupplyRow;
import org.jspecify.annotations.Nullable;

/**
 * What comes next from a place of the path.
 *
 * @param action next point of the handling table for the driver
 * @param restriction next reduction of speed
 * @param braking next braking point
 * @param water next place where water is taken
 */
public record FromHere(
        double positionM,
        @Nullable HandlingRow action,
        @Nullable BrakingRow restriction,
        @Nullable BrakingRow braking,
        @Nullable SupplyRow water) {

    private static final double HERE_M = 1;

    /** Returns true where the next braking point lies behind already. */
    public boolean brakesNow() {
        return braking != null && braking.brakeAt().positionM() < positionM;
    }

    static FromHere at(BriefingDocument document, double positionM) {
        return new FromHere(
                positionM,
                first(document.handling().stream()
                        .filter(row -> !row.forFireman())
                        .filter(row -> row.place().positionM() >= positionM - HERE_M)
                        .findFirst()),
                first(document.braking().stream()
                        .filter(row -> !row.target().equals("stop"))
                        .filter(row -> row.targetPlace().positionM() >= positionM)
                        .findFirst()),
                first(document.braking().stream()
                        .filter(row -> row.targetPlace().positionM() > positionM)
                        .findFirst()),
                first(supplies(document).stream()
                        .filter(row -> row.place().positionM() > positionM)
                        .findFirst()));
    }

    private static List<SupplyRow> supplies(BriefingDocument document) {
        return document.supplies().stream().filter(row -> row.taken() != null).toList();
    }

    private static <T> @Nullable T first(Optional<T> found) {
        return found.orElse(null);
    }
}
