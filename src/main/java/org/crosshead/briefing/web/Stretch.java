package org.crosshead.briefing.web;

import java.util.List;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.diagram.PanelFormat;

/**
 * A panel of the strip with its own rows of the handling table.
 *
 * @param leftShare share of the wide drawing's width left of its distance axis
 * @param axisShare share of that width taken by the axis
 */
record Stretch(Drawings.Panel panel, List<HandlingRow> rows, double leftShare, double axisShare) {

    static List<Stretch> of(List<Drawings.Panel> panels, List<HandlingRow> handling) {
        Drawings.Panel last = panels.get(panels.size() - 1);
        return panels.stream()
                .map(panel -> new Stretch(
                        panel,
                        handling.stream()
                                .filter(row -> row.place().positionM() >= panel.fromM())
                                .filter(row -> row.place().positionM() < panel.toM() || panel.equals(last))
                                .toList(),
                        PanelFormat.WIDE.leftShare(),
                        PanelFormat.WIDE.axisShare()))
                .toList();
    }
}
