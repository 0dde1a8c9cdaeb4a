/** Builds, issues and reissues the briefing of a train; the only caller of motion and handling. */
@NullMarked
package org.crosshead.briefing;

import org.jspecify.annotations.NullMarked;
