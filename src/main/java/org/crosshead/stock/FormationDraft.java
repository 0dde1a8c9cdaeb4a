package org.crosshead.stock;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A consist, front first: vehicles counted by kind, or vehicle by vehicle with count 1 and a number. */
public record FormationDraft(String code, String name, List<Item> items) {

    public FormationDraft {
        items = List.copyOf(items);
    }

    /**
     * Some vehicles of one kind.
     *
     * @param loadTons load in each, long tons; null for the kind's own
     * @param vehicleNumber painted number where vehicles are listed one by one, or empty
     * @param brakeWorking false where its brake is cut out
     */
    public record Item(
            String vehicleKindCode, int count, @Nullable Double loadTons, String vehicleNumber, boolean brakeWorking) {}
}
