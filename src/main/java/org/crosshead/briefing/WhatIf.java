package org.crosshead.briefing;

import org.crosshead.kernel.traction.RailState;
import org.jspecify.annotations.Nullable;

/**
 * A day that is not as planned.
 *
 * @param loadPercent of the trailing load, from 20 to 200
 * @param rail state of the rail, stretches of poor rail aside
 * @param lateMinutes by how much the train starts late, from 0 to 240
 * @param engine what is other about the engines
 * @param stop a stop that is not booked, such as at a signal at danger; null for none
 * @param slow a restriction that is not laid down; null for none
 */
public record WhatIf(
        double loadPercent,
        RailState rail,
        double lateMinutes,
        EngineDay engine,
        @Nullable Stop stop,
        @Nullable Slow slow) {

    private static final double LOAD_LEAST = 20;
    private static final double LOAD_MOST = 200;
    private static final double LATE_MOST = 240;
    private static final double PRESSURE_LEAST = 60;
    private static final double COAL_LEAST = 50;
    private static final double COAL_MOST = 120;
    private static final double GRATE_LEAST = 50;
    private static final double WHOLE = 100;
    private static final double STOP_MOST = 60;
    private static final double SLOW_LEAST = 5;
    private static final double SLOW_MOST = 90;

    public WhatIf {
        within("load", loadPercent, LOAD_LEAST, LOAD_MOST);
        within("late", lateMinutes, 0, LATE_MOST);
    }

    /** With the engine as booked, no further stop and no further restriction. */
    public WhatIf(double loadPercent, RailState rail, double lateMinutes, double pressurePercent) {
        this(loadPercent, rail, lateMinutes, EngineDay.asBooked(pressurePercent), null, null);
    }

    /**
     * The engines of the day.
     *
     * @param pressurePercent pressure at the start, of what the briefing counts with, from 60 to 100
     * @param coalPercent heat of the coal, of what the briefing counts with, from 50 to 120
     * @param gratePercent part of the grate that burns, the rest clinkered, from 50 to 100
     * @param number of another train engine; null for the one booked
     * @param tenderFirst whether the train engine runs tender or bunker first all the way; false for as booked
     * @param help an engine that assists; null for none besides those booked
     */
    public record EngineDay(
            double pressurePercent,
            double coalPercent,
            double gratePercent,
            @Nullable String number,
            boolean tenderFirst,
            @Nullable Help help) {

        public EngineDay {
            within("pressure", pressurePercent, PRESSURE_LEAST, WHOLE);
            within("coal", coalPercent, COAL_LEAST, COAL_MOST);
            within("grate", gratePercent, GRATE_LEAST, WHOLE);
        }

        static EngineDay asBooked(double pressurePercent) {
            return new EngineDay(pressurePercent, WHOLE, WHOLE, null, false, null);
        }
    }

    /** An engine that assists at the rear between two of the train's calls. */
    public record Help(String number, String fromPlace, String toPlace) {}

    /**
     * A stop that is not booked.
     *
     * @param minutes how long it stands, from 0 to 60
     */
    public record Stop(double pathM, double minutes) {

        public Stop {
            within("stop", minutes, 0, STOP_MOST);
            if (!Double.isFinite(pathM)) {
                throw new BriefingRefusedException("what-if-stop-place");
            }
        }
    }

    /**
     * A restriction that is not laid down.
     *
     * @param mph from 5 to 90
     */
    public record Slow(double fromM, double toM, double mph) {

        public Slow {
            within("slow", mph, SLOW_LEAST, SLOW_MOST);
            if (!(toM > fromM && Double.isFinite(toM - fromM))) {
                throw new BriefingRefusedException("what-if-slow-places");
            }
        }
    }

    private static void within(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new BriefingRefusedException("what-if-" + field);
        }
    }
}
