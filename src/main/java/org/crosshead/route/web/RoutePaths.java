package org.crosshead.route.web;

import java.util.List;
import org.crosshead.route.Direction;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathLeg;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.TrainKind;

/** The whole of a route as one path. */
final class RoutePaths {

    private RoutePaths() {}

    static PathGeometry rising(RouteRevision revision) {
        RouteDraft draft = revision.content();
        PathLeg leg = new PathLeg(
                revision, draft.fromMeasure(), draft.toMeasure(), draft.lines().get(0), Direction.RISING, false);
        return PathGeometry.of(List.of(leg), TrainKind.PASSENGER, List.of());
    }
}
