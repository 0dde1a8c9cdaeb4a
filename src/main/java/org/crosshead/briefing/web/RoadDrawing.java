package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.Road;
import org.crosshead.diagram.PanelFormat;
import org.crosshead.diagram.StripDrawing;
import org.crosshead.diagram.StripModel;
import org.crosshead.diagram.StripPanel;

/** Draws the road of a briefing as SVG elements, one for each of its panels. */
public final class RoadDrawing {

    private RoadDrawing() {}

    /** Returns the panels of a road without points, in the packed words. */
    public static List<String> svgPanels(Road road) {
        return wide(road, StripFigures.of(road, RoadWords.packed()), RoadWords.packed());
    }

    /** Returns the panels with the points of the handling table and the booked times. */
    public static List<String> svgPanels(BriefingDocument document, RoadWords words) {
        return wide(document.road(), StripFigures.of(document, words), words);
    }

    /** Returns for each panel what a screen under 600 px shows in its place: two or three shorter drawings. */
    public static List<String> narrowPanels(BriefingDocument document, RoadWords words) {
        Road road = document.road();
        StripModel model = StripFigures.of(document, words);
        List<StripPanel> parts = new ArrayList<>();
        List<Integer> panelOfPart = new ArrayList<>();
        for (int panel = 1; panel < road.panels().size(); panel++) {
            List<Double> breaks = StripPanel.narrowBreaks(
                    model, road.panels().get(panel - 1), road.panels().get(panel));
            for (StripPanel part : parts(road, breaks, words)) {
                parts.add(part);
                panelOfPart.add(panel - 1);
            }
        }
        List<String> drawn = StripDrawing.panels(model, parts, PanelFormat.NARROW);
        List<StringBuilder> together = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            if (together.size() == panelOfPart.get(i)) {
                together.add(new StringBuilder());
            }
            together.get(panelOfPart.get(i)).append(drawn.get(i));
        }
        return together.stream().map(StringBuilder::toString).toList();
    }

    private static List<String> wide(Road road, StripModel model, RoadWords words) {
        return StripDrawing.panels(model, parts(road, road.panels(), words), PanelFormat.WIDE);
    }

    private static List<StripPanel> parts(Road road, List<Double> breaks, RoadWords words) {
        List<StripPanel> parts = new ArrayList<>();
        for (int i = 1; i < breaks.size(); i++) {
            double fromM = breaks.get(i - 1);
            double toM = breaks.get(i);
            String label = words.say("strip.panel", Posts.at(road, fromM, words), Posts.at(road, toM, words));
            parts.add(new StripPanel(fromM, toM, label));
        }
        return parts;
    }
}
