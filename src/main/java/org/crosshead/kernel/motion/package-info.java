/** The run of a train over a path: where boiler, brakes and train meet. */
@NullMarked
package org.crosshead.kernel.motion;

import org.jspecify.annotations.NullMarked;
