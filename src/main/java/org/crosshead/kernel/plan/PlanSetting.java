package org.crosshead.kernel.plan;

import org.crosshead.kernel.traction.Controls;

/**
 * How the handles are set from a place on.
 *
 * @param fromM where they are set
 * @param controls shut where the regulator is 0
 */
public record PlanSetting(double fromM, Controls controls) {

    public boolean shut() {
        return controls.regulator() <= 0;
    }
}
