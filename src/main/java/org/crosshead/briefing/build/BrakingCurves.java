package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.BrakingCurve;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.braking.StoppingDistance;
import org.crosshead.kernel.traction.Adhesion;
import org.crosshead.kernel.traction.RailState;

/** How a train slows from a braking point on, by service and emergency application, on a dry and on a greasy rail. */
final class BrakingCurves {

    private static final int KEPT = 24;
    /** Drawn so far; a brake that brings the train no lower is shown by a line that does not come down. */
    private static final double DRAWN_M = 4_000;

    private final TrainModel model;

    BrakingCurves(TrainModel model) {
        this.model = model;
    }

    List<BrakingCurve> from(double atM, double fromMps, double toMps) {
        List<Application> dry = model.onRail(CastIronBlocks.RAIL_SHARE);
        List<Application> greasy =
                model.onRail(Math.min(CastIronBlocks.RAIL_SHARE, Adhesion.coefficient(RailState.GREASY, 0)));
        return List.of(
                curve("service-dry", dry.get(0), atM, fromMps, toMps),
                curve("emergency-dry", dry.get(1), atM, fromMps, toMps),
                curve("service-greasy", greasy.get(0), atM, fromMps, toMps),
                curve("emergency-greasy", greasy.get(1), atM, fromMps, toMps));
    }

    private BrakingCurve curve(String kind, Application application, double atM, double fromMps, double toMps) {
        List<Double> metres = new ArrayList<>();
        List<Double> speeds = new ArrayList<>();
        StoppingDistance.traced(
                application,
                model.brakingBody(),
                model.request().road().track().gradients(),
                atM,
                fromMps,
                toMps,
                (distanceM, speedMps) -> {
                    if (distanceM <= DRAWN_M) {
                        metres.add(distanceM);
                        speeds.add(speedMps);
                    }
                });
        return new BrakingCurve(kind, thinned(metres, 1), thinned(speeds, 100));
    }

    private static List<Double> thinned(List<Double> all, double perUnit) {
        int step = Math.max(1, all.size() / KEPT);
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < all.size(); i += step) {
            kept.add(Math.round(all.get(i) * perUnit) / perUnit);
        }
        if ((all.size() - 1) % step != 0) {
            kept.add(Math.round(all.get(all.size() - 1) * perUnit) / perUnit);
        }
        return kept;
    }
}
