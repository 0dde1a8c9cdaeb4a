/** The suggested points to change cutoff and regulator. */
@NullMarked
package org.crosshead.kernel.handling;

import org.jspecify.annotations.NullMarked;
