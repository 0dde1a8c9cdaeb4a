/** Gradients, curves and limits along a path, indexed by distance from its start. */
@NullMarked
package org.crosshead.kernel.track;

import org.jspecify.annotations.NullMarked;
