package org.crosshead.route.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.crosshead.diagram.LongSection;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathGradient;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.springframework.stereotype.Component;

/** The long section of a route in panels of one vertical scale, each no longer than a crew overlooks. */
@Component
class LongSectionDiagram implements RouteDiagram {

    private static final double PANEL_MILES = 8;
    private static final double PANEL_KM = 13;
    private static final double CHAINS_PER_MILE = 80;

    private final RouteWords words;

    LongSectionDiagram(RouteWords words) {
        this.words = words;
    }

    @Override
    public String svg(RouteRevision revision) {
        return svg(
                revision, revision.content().fromMeasure(), revision.content().toMeasure());
    }

    @Override
    public String svg(RouteRevision revision, double fromMeasure, double toMeasure) {
        PathGeometry path = RoutePaths.rising(revision);
        RouteDraft draft = revision.content();
        boolean chains = draft.measureUnit() == MeasureUnit.CHAINS;
        LongSection.Profile profile = new LongSection.Profile(points(path, draft), slopes(path, draft), places(draft));
        double length = post(draft, toMeasure) - post(draft, fromMeasure);
        int panels = (int) Math.max(1, Math.ceil(length / (chains ? PANEL_MILES : PANEL_KM)));
        StringBuilder drawings = new StringBuilder();
        for (int i = 0; i < panels; i++) {
            double from = post(draft, fromMeasure) + length * i / panels;
            double to = post(draft, fromMeasure) + length * (i + 1) / panels;
            drawings.append(LongSection.svg(profile, new LongSection.Panel(from, to), words(draft, from, to)));
        }
        return drawings.toString();
    }

    private LongSection.Words words(RouteDraft draft, double from, double to) {
        MeasureUnit unit = draft.measureUnit();
        double perPost = unit == MeasureUnit.CHAINS ? CHAINS_PER_MILE : 1;
        return new LongSection.Words(
                words.of("route.diagram.distance." + unit),
                words.of("route.diagram.height." + unit),
                words.of(
                        "route.diagram.spoken",
                        draft.name(),
                        Measures.format(from * perPost, unit),
                        Measures.format(to * perPost, unit)));
    }

    private static List<LongSection.Point> points(PathGeometry path, RouteDraft draft) {
        GradientProfile profile = path.profile();
        List<LongSection.Point> points = new ArrayList<>();
        double lowestM =
                Arrays.stream(profile.boundariesM()).map(profile::heightM).min().orElse(0);
        for (double atM : profile.boundariesM()) {
            double heightM = profile.heightM(atM) - lowestM;
            boolean chains = draft.measureUnit() == MeasureUnit.CHAINS;
            double height = chains ? Units.feetFromMetres(heightM) : heightM;
            points.add(new LongSection.Point(post(draft, path.at(atM).measure()), height));
        }
        return points;
    }

    private List<LongSection.Slope> slopes(PathGeometry path, RouteDraft draft) {
        return path.gradients().stream()
                .map(one -> new LongSection.Slope(
                        post(draft, path.at(one.fromM()).measure()),
                        post(draft, path.at(one.toM()).measure()),
                        label(one)))
                .toList();
    }

    private String label(PathGradient gradient) {
        return words.of("route.diagram." + gradient.notation(), Numbers.typed(Math.abs(gradient.value())));
    }

    private static List<LongSection.Place> places(RouteDraft draft) {
        return draft.features().stream()
                .filter(one -> one.kind() == FeatureKind.STATION)
                .map(one -> new LongSection.Place(post(draft, one.atMeasure()), one.name()))
                .toList();
    }

    /** Miles or kilometres, by which the posts along the line are counted. */
    private static double post(RouteDraft draft, double measure) {
        return draft.measureUnit() == MeasureUnit.CHAINS ? measure / CHAINS_PER_MILE : measure;
    }
}
