/** The issued briefing as one stored, versioned document: kinds and values that the page puts into words. */
@NullMarked
package org.crosshead.briefing.document;

import org.jspecify.annotations.NullMarked;
