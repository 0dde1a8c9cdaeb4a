/** Works a briefing out of a train and everything stored about it. */
@NullMarked
package org.crosshead.briefing.build;

import org.jspecify.annotations.NullMarked;
