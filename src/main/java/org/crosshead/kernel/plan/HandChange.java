package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.Controls;

/** What an inspector changes in a plan by hand. */
public sealed interface HandChange {

    /** Where it is. */
    double atM();

    /** The handles are set so here, until the plan's next setting; in place of a setting of the plan that lies here. */
    record Added(double atM, Controls controls) implements HandChange {}

    /** The plan's setting near here is made elsewhere. */
    record Moved(double atM, double toM) implements HandChange {}

    /** The plan's setting near here is left out. */
    record Struck(double atM) implements HandChange {}
}
