/** Brakes as a delay, a build-up and a retarding force; stopping and slowing distances. */
@NullMarked
package org.crosshead.kernel.braking;

import org.jspecify.annotations.NullMarked;
