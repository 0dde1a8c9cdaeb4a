/** Running, curve and gradient resistance of a train. */
@NullMarked
package org.crosshead.kernel.resistance;

import org.jspecify.annotations.NullMarked;
