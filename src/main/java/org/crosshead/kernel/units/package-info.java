/** Every unit conversion, and the guards on arguments. */
@NullMarked
package org.crosshead.kernel.units;

import org.jspecify.annotations.NullMarked;
