package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Controls;

/**
 * What a driver has set, and why it was set so.
 *
 * @param cocksOpen true while the cylinder drain cocks are open
 */
public record Handles(Controls controls, boolean cocksOpen, Cause cause) {

    /** Returns true if nothing but the reason differs. */
    public boolean sameAs(Handles other) {
        return cocksOpen == other.cocksOpen && controls.equals(other.controls);
    }
}
