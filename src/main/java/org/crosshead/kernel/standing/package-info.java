/** Holding and restarting a train on a place. */
@NullMarked
package org.crosshead.kernel.standing;

import org.jspecify.annotations.NullMarked;
