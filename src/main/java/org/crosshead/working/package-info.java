/** A train on a day: its path over routes, calls, formation, engines and crew. */
@NullMarked
package org.crosshead.working;

import org.jspecify.annotations.NullMarked;
