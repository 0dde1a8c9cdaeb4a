package org.crosshead.briefing.web;

import java.util.List;
import org.crosshead.briefing.document.HandlingRow;

/** A panel of the strip with its own rows of the handling table. */
record Stretch(Drawings.Panel panel, List<HandlingRow> rows) {

    static List<Stretch> of(List<Drawings.Panel> panels, List<HandlingRow> handling) {
        Drawings.Panel last = panels.get(panels.size() - 1);
        return panels.stream()
                .map(panel -> new Stretch(
                        panel,
                        handling.stream()
                                .filter(row -> row.place().positionM() >= panel.fromM())
                                .filter(row -> row.place().positionM() < panel.toM() || panel.equals(last))
                                .toList()))
                .toList();
    }
}
