/** CSV in and out, and the demonstration railway; uses the capabilities, used by none. */
@NullMarked
package org.crosshead.exchange;

import org.jspecify.annotations.NullMarked;
