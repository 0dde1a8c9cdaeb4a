/** How sure a forecast is: the same handling on days that differ in what nobody knows beforehand. */
@NullMarked
package org.crosshead.kernel.scatter;

import org.jspecify.annotations.NullMarked;
