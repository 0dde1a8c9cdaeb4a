package org.crosshead.route.web;

import org.crosshead.route.RouteRevision;

/** Draws the gradients of a route. */
public interface RouteDiagram {

    /** Returns one or several SVG elements, in the order in which the measure rises. */
    String svg(RouteRevision revision);

    /** As {@link #svg(RouteRevision)}, from one place to another, the lower measure first. */
    String svg(RouteRevision revision, double fromMeasure, double toMeasure);
}
