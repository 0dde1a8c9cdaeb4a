/** Crosshead: briefs steam train crews and keeps their route knowledge and competence. */
@NullMarked
package org.crosshead;

import org.jspecify.annotations.NullMarked;
