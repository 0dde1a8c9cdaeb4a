/** Routes, gradients, limits, landmarks, revisions and restrictions, stored as the source prints them. */
@NullMarked
package org.crosshead.route;

import org.jspecify.annotations.NullMarked;
