/** The run that costs least, and the plan of few changes made from it that a crew can work by. */
@NullMarked
package org.crosshead.kernel.plan;

import org.jspecify.annotations.NullMarked;
