/** Locomotive classes, engines, vehicles and formations; each figure with its source. */
@NullMarked
package org.crosshead.stock;

import org.jspecify.annotations.NullMarked;
