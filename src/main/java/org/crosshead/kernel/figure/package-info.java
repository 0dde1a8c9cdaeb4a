/** A value that can say how it came about. */
@NullMarked
package org.crosshead.kernel.figure;

import org.jspecify.annotations.NullMarked;
