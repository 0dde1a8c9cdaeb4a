/** People and their posts. */
@NullMarked
package org.crosshead.crew;

import org.jspecify.annotations.NullMarked;
