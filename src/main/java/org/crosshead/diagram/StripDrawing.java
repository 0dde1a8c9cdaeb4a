package org.crosshead.diagram;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.crosshead.diagram.StripModel.MarkKind;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Draws the strip of a briefing: lanes one under another along one axis of distance, in the order in which a crew thinks.
 * All panels of a strip have the same vertical scales.
 */
public final class StripDrawing {

    private static final int WEIGHT_PER_PX = 10;

    private final StripModel model;
    private final List<StripPanel> parts;
    private final List<Panel> panels;
    private final String prefix;
    private final int driverRows;
    private final int firemanRows;

    private StripDrawing(StripModel model, List<StripPanel> parts, PanelFormat format) {
        this.model = model;
        this.parts = List.copyOf(parts);
        this.prefix = format == PanelFormat.WIDE ? "sw" : "sn";
        List<Double> breaks =
                new ArrayList<>(parts.stream().map(StripPanel::fromM).toList());
        breaks.add(parts.get(parts.size() - 1).toM());
        Scales scales = Scales.of(model, breaks);
        this.panels = this.parts.stream()
                .map(part -> new Panel(model, format, scales, part.fromM(), part.toM()))
                .toList();
        this.driverRows = rows(false);
        this.firemanRows = rows(true);
    }

    /**
     * Returns one SVG element for each panel.
     *
     * @param parts in running order, each beginning where the last ends
     */
    public static List<String> panels(StripModel model, List<StripPanel> parts, PanelFormat format) {
        if (parts.isEmpty()) {
            return List.of();
        }
        StripDrawing drawing = new StripDrawing(model, parts, format);
        List<String> drawn = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            drawn.add(drawing.panel(i).text());
        }
        return List.copyOf(drawn);
    }

    /** The writer of one panel, for tests that ask where its labels and points stand. */
    static PanelWriter writer(StripModel model, List<StripPanel> parts, PanelFormat format, int index) {
        return new StripDrawing(model, parts, format).panel(index);
    }

    private int rows(boolean forFireman) {
        return panels.stream()
                .mapToInt(panel -> PointRows.needed(panel, forFireman))
                .max()
                .orElse(1);
    }

    private PanelWriter panel(int index) {
        Panel panel = panels.get(index);
        List<Lane> lanes = lanes(panel);
        double heightPx = lanes.stream().mapToDouble(Lane::heightPx).sum();
        StripGraphics graphics = StripGraphics.forPanel(prefix + index);
        chart(panel, lanes).draw(graphics, new Rectangle2D.Double(0, 0, panel.format().widthPx, heightPx));
        return new PanelWriter(graphics, prefix + index, parts.get(index), panel.format(), heightPx);
    }

    /** The lanes of curves, water and hazards stand only where there is something in them. */
    private List<Lane> lanes(Panel panel) {
        List<Lane> lanes =
                new ArrayList<>(List.of(PlacesLane.draw(panel), SpeedLane.draw(panel), GroundLane.draw(panel)));
        if (model.curves().stream().anyMatch(curve -> panel.shows(curve.fromM(), curve.toM()))) {
            lanes.add(RoadsideLanes.curves(panel));
        }
        if (shown(panel).anyMatch(mark -> mark.kind() == MarkKind.WATER)) {
            lanes.add(RoadsideLanes.water(panel));
        }
        if (shown(panel).anyMatch(RoadsideLanes::isHazard)) {
            lanes.add(RoadsideLanes.hazards(panel));
        }
        if (!model.standing().isEmpty()) {
            lanes.add(StandingLane.draw(panel));
        }
        lanes.add(ControlsLane.draw(panel, driverRows));
        if (!model.work().isEmpty() || model.points().stream().anyMatch(StripModel.Point::forFireman)) {
            lanes.add(FiremanLane.draw(panel, firemanRows));
        }
        if (isKnown(model.run().pressurePsi())) {
            lanes.add(BoilerLanes.pressure(panel));
        }
        if (isKnown(model.run().glassPercent())) {
            lanes.add(BoilerLanes.glass(panel));
        }
        lanes.add(MeasureLane.draw(panel));
        return lanes;
    }

    private static boolean isKnown(List<Double> values) {
        return values.stream().anyMatch(Double::isFinite);
    }

    private static Stream<StripModel.Mark> shown(Panel panel) {
        return panel.model().marks().stream().filter(mark -> panel.shows(mark.fromM(), PlacesLane.end(mark)));
    }

    private static JFreeChart chart(Panel panel, List<Lane> lanes) {
        NumberAxis distance = new NumberAxis();
        distance.setRange(panel.fromM(), panel.toM());
        distance.setVisible(false);
        CombinedDomainXYPlot whole = new CombinedDomainXYPlot(distance);
        whole.setGap(0);
        whole.setInsets(new RectangleInsets(0, panel.format().leftPx, 0, panel.format().rightPx));
        whole.setBackgroundPaint(null);
        whole.setOutlineVisible(false);
        for (Lane lane : lanes) {
            whole.add(lane.plot(), (int) Math.round(lane.heightPx() * WEIGHT_PER_PX));
        }
        JFreeChart chart = new JFreeChart(null, null, whole, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }
}
