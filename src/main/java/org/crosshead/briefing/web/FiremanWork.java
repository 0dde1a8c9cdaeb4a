package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.diagram.StripModel.Work;
import org.crosshead.diagram.StripModel.WorkKind;

/**
 * The fireman's rows of the strip, told from the kinds of his points: one that begins with "fire" is a round of firing;
 * "injector" and "blower" run from their point to the next of the same word that ends in "off", or to the end.
 */
final class FiremanWork {

    private FiremanWork() {}

    static List<Work> of(List<HandlingRow> handling, double lengthM) {
        List<Work> work = new ArrayList<>();
        for (HandlingRow row : handling) {
            double positionM = row.place().positionM();
            if (row.forFireman() && kind(row).startsWith("fire")) {
                work.add(new Work(WorkKind.FIRE, positionM, positionM, ""));
            }
        }
        work.addAll(runs(handling, WorkKind.INJECTOR, lengthM));
        work.addAll(runs(handling, WorkKind.BLOWER, lengthM));
        return work;
    }

    private static List<Work> runs(List<HandlingRow> handling, WorkKind kind, double lengthM) {
        String word = kind.name().toLowerCase(Locale.ROOT);
        List<Work> runs = new ArrayList<>();
        double onM = Double.NaN;
        for (HandlingRow row : handling) {
            if (!kind(row).startsWith(word)) {
                continue;
            }
            double positionM = row.place().positionM();
            boolean off = kind(row).endsWith("off");
            if (off && positionM > onM) {
                runs.add(new Work(kind, onM, positionM, ""));
            }
            onM = off ? Double.NaN : Double.isNaN(onM) ? positionM : onM;
        }
        if (onM < lengthM) {
            runs.add(new Work(kind, onM, lengthM, ""));
        }
        return runs;
    }

    private static String kind(HandlingRow row) {
        return row.action().toLowerCase(Locale.ROOT);
    }
}
