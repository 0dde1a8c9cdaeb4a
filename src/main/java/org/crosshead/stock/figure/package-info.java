/** The catalogue of figures: what each is called, its units, its sensible range, what it is for, and how it may be estimated. */
@NullMarked
package org.crosshead.stock.figure;

import org.jspecify.annotations.NullMarked;
