/** Physics and optimisation: pure Java, SI inside, the same input gives the same output to the last bit. */
@NullMarked
package org.crosshead.kernel;

import org.jspecify.annotations.NullMarked;
