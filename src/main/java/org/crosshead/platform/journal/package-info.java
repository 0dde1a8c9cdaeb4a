/** The journal as the database keeps it. */
@NullMarked
package org.crosshead.platform.journal;

import org.jspecify.annotations.NullMarked;
