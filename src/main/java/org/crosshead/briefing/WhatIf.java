package org.crosshead.briefing;

import org.crosshead.kernel.traction.RailState;

/**
 * A day that is not as planned.
 *
 * @param loadPercent of the trailing load, from 20 to 200
 * @param rail state of the rail, stretches of poor rail aside
 * @param lateMinutes by how much the train starts late, from 0 to 240
 * @param pressurePercent pressure at the start, of what the briefing counts with, from 60 to 100
 */
public record WhatIf(double loadPercent, RailState rail, double lateMinutes, double pressurePercent) {

    private static final double LOAD_LEAST = 20;
    private static final double LOAD_MOST = 200;
    private static final double LATE_MOST = 240;
    private static final double PRESSURE_LEAST = 60;
    private static final double WHOLE = 100;

    public WhatIf {
        within("load", loadPercent, LOAD_LEAST, LOAD_MOST);
        within("late", lateMinutes, 0, LATE_MOST);
        within("pressure", pressurePercent, PRESSURE_LEAST, WHOLE);
    }

    private static void within(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new BriefingRefusedException("what-if-" + field);
        }
    }
}
