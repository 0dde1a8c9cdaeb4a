package org.crosshead.route.web;

import org.crosshead.route.RouteRevision;

/** Draws the gradients of a route. */
@FunctionalInterface
interface RouteDiagram {

    /** Returns one or several SVG elements, in the order in which the measure rises. */
    String svg(RouteRevision revision);
}
