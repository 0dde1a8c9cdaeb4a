/** Draws diagrams as SVG; the only place that knows the charting library. */
@NullMarked
package org.crosshead.diagram;

import org.jspecify.annotations.NullMarked;
