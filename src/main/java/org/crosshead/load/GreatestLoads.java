package org.crosshead.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.load.LoadAnswer.Lack;
import org.crosshead.load.LoadAnswer.Section;
import org.crosshead.route.Direction;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathLeg;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineMaker;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.MissingFigure;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.VehicleFigure;
import org.springframework.stereotype.Service;

/** Answers how much a class can take over a road, at what speed, and what stops it. */
@Service
public class GreatestLoads {

    /** Stations nearer to each other than this are one. */
    private static final double APART_M = 400;

    private final Routes routes;
    private final LocomotiveClasses classes;
    private final VehicleKinds kinds;
    private final EngineMaker maker;

    GreatestLoads(Routes routes, LocomotiveClasses classes, VehicleKinds kinds, EngineMaker maker) {
        this.routes = routes;
        this.classes = classes;
        this.kinds = kinds;
        this.maker = maker;
    }

    /**
     * Returns the answer; empty if route, class or kind is not known.
     *
     * @throws IllegalArgumentException if a figure of the question is out of range
     */
    public Optional<LoadAnswer> answer(LoadQuestion asked) {
        Optional<RouteRevision> route = routes.current(asked.routeCode());
        Optional<ClassRevision> ofClass = classes.current(asked.classCode());
        Optional<VehicleKindRevision> kind = kinds.current(asked.kindCode());
        return route.isEmpty() || ofClass.isEmpty() || kind.isEmpty()
                ? Optional.empty()
                : Optional.of(answer(asked, path(asked, route.get()), ofClass.get(), kind.get()));
    }

    private LoadAnswer answer(LoadQuestion asked, PathGeometry path, ClassRevision ofClass, VehicleKindRevision kind) {
        List<Lack> lacks = new ArrayList<>();
        EngineFigures engine = StockModel.engine(ofClass, null);
        if (engine instanceof EngineFigures.Missing missing) {
            missing.missing().forEach(figure -> lacks.add(lack("class", figure)));
        }
        FormationFigures one = one(kind);
        if (one instanceof FormationFigures.Missing missing) {
            missing.missing().forEach(figure -> lacks.add(lack("vehicle", figure)));
        }
        if (path.estimates().stream().anyMatch(estimate -> !estimate.accepted())) {
            lacks.add(new Lack("route-estimates", asked.routeCode(), ""));
        }
        if (engine instanceof EngineFigures.Resolved known
                && one instanceof FormationFigures.Resolved load
                && lacks.isEmpty()) {
            Hauled hauled = new Hauled(
                    known, maker.of(known.parameters()), load.vehicles().get(0));
            double speedMaxMps = Math.min(known.parameters().speedMaxMps(), speedMaxMps(kind));
            RoadLoads loads = new RoadLoads(path, hauled, asked, speedMaxMps);
            return new LoadAnswer.Known(sections(path, loads), loads.runs());
        }
        return new LoadAnswer.Missing(lacks);
    }

    private static Lack lack(String code, MissingFigure figure) {
        return new Lack(code, figure.subject(), figure.spec().key());
    }

    /** One vehicle of the kind, with its own load. */
    private static FormationFigures one(VehicleKindRevision kind) {
        String code = kind.content().code();
        FormationDraft.Item item = new FormationDraft.Item(code, 1, null, "", true);
        return StockModel.formation(new FormationDraft(code, code, List.of(item)), Map.of(code, kind), BrakeKind.NONE);
    }

    private static double speedMaxMps(VehicleKindRevision kind) {
        for (SourcedFigure figure : kind.content().figures()) {
            Double value = figure.value();
            if (value != null && figure.accepted() && figure.key().equals(VehicleFigure.MAX_SPEED.key())) {
                return FigureUnit.labelled(figure.unit()).orElseThrow().toSi(value);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static PathGeometry path(LoadQuestion asked, RouteRevision route) {
        RouteDraft content = route.content();
        boolean rising = asked.direction() == Direction.RISING;
        List<String> lines = content.lines();
        return PathGeometry.of(
                List.of(new PathLeg(
                        route,
                        rising ? content.fromMeasure() : content.toMeasure(),
                        rising ? content.toMeasure() : content.fromMeasure(),
                        lines.get(rising ? 0 : lines.size() - 1),
                        asked.direction(),
                        asked.tenderFirst())),
                TrainKind.PASSENGER,
                List.of());
    }

    private static List<Section> sections(PathGeometry path, RoadLoads loads) {
        List<PathFeature> stations = new ArrayList<>();
        for (PathFeature feature : path.features()) {
            boolean apart = stations.isEmpty()
                    || feature.fromM() - stations.get(stations.size() - 1).fromM() > APART_M;
            if (feature.feature().kind() == FeatureKind.STATION && apart) {
                stations.add(feature);
            }
        }
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i + 1 < stations.size(); i++) {
            PathFeature from = stations.get(i);
            PathFeature to = stations.get(i + 1);
            sections.add(loads.section(from.feature().name(), to.feature().name(), from.fromM(), to.fromM()));
        }
        return sections;
    }
}
