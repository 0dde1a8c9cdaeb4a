package org.crosshead.briefing.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The panels of a road as the page gets them. */
class RoadDrawingTests {

    @Test
    void givesOneElementAPanel() {
        List<String> panels = RoadDrawing.svgPanels(RoadFixtures.eightMiles());
        assertThat(panels)
                .hasSize(2)
                .allSatisfy(panel -> assertThat(panel).startsWith("<svg ").endsWith("</svg>"));
        assertThat(panels.get(0)).contains("aria-label=\"Strip of the road from Oxen Quay to Rushy Bridge.");
        assertThat(panels.get(1)).contains(">80 km/h</text>", ">does not start</text>");
    }
}
