package org.crosshead.briefing.web;

import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.WhatIf;
import org.crosshead.kernel.traction.RailState;
import org.jspecify.annotations.Nullable;

/**
 * What was asked, as it was written; null where it was not sent.
 *
 * @param load per cent
 * @param late minutes
 * @param pressure per cent
 * @param coal per cent
 * @param grate per cent
 * @param engine number of the train engine
 * @param tender "yes" for tender first
 * @param help number of an engine that assists; blank for none
 * @param helpFrom name of a call
 * @param helpTo name of a call
 * @param stop metres along the path; blank for none
 * @param stopMinutes minutes
 * @param slowFrom metres along the path; blank for none
 * @param slowTo metres along the path
 * @param slowSpeed miles an hour
 */
record WhatIfForm(
        @Nullable String load,
        @Nullable String rail,
        @Nullable String late,
        @Nullable String pressure,
        @Nullable String coal,
        @Nullable String grate,
        @Nullable String engine,
        @Nullable String tender,
        @Nullable String help,
        @Nullable String helpFrom,
        @Nullable String helpTo,
        @Nullable String stop,
        @Nullable String stopMinutes,
        @Nullable String slowFrom,
        @Nullable String slowTo,
        @Nullable String slowSpeed) {

    /** Says whether anything was asked. */
    boolean sent() {
        return load != null || rail != null || late != null || pressure != null;
    }

    /** Returns this with what is as booked where nothing was written. */
    WhatIfForm filled(String railNow, String engineNow) {
        return new WhatIfForm(
                or(load, "100"),
                or(rail, railNow),
                or(late, "0"),
                or(pressure, "100"),
                or(coal, "100"),
                or(grate, "100"),
                or(engine, engineNow),
                or(tender, ""),
                or(help, ""),
                or(helpFrom, ""),
                or(helpTo, ""),
                or(stop, ""),
                or(stopMinutes, "5"),
                or(slowFrom, ""),
                or(slowTo, ""),
                or(slowSpeed, "20"));
    }

    /** Says whether more is asked than load, rail, lateness and pressure. */
    boolean asksMore(String engineNow) {
        return !"100".equals(coal)
                || !"100".equals(grate)
                || "yes".equals(tender)
                || !isBlank(help)
                || !isBlank(stop)
                || !isBlank(slowFrom)
                || !engineNow.equals(engine);
    }

    /** @throws BriefingRefusedException if anything cannot be read or is out of its range */
    WhatIf asked() {
        return new WhatIf(
                WhatIfController.number(load, "load"),
                state(rail),
                WhatIfController.number(late, "late"),
                new WhatIf.EngineDay(
                        WhatIfController.number(pressure, "pressure"),
                        WhatIfController.number(coal, "coal"),
                        WhatIfController.number(grate, "grate"),
                        engine,
                        "yes".equals(tender),
                        isBlank(help) ? null : new WhatIf.Help(or(help, ""), or(helpFrom, ""), or(helpTo, ""))),
                isBlank(stop)
                        ? null
                        : new WhatIf.Stop(
                                WhatIfController.number(stop, "stop-place"),
                                WhatIfController.number(stopMinutes, "stop")),
                isBlank(slowFrom)
                        ? null
                        : new WhatIf.Slow(
                                WhatIfController.number(slowFrom, "slow-places"),
                                WhatIfController.number(slowTo, "slow-places"),
                                WhatIfController.number(slowSpeed, "slow")));
    }

    private static boolean isBlank(@Nullable String given) {
        return given == null || given.isBlank();
    }

    private static String or(@Nullable String given, String otherwise) {
        return given == null ? otherwise : given;
    }

    private static RailState state(@Nullable String given) {
        for (RailState state : RailState.values()) {
            if (state.name().equals(given)) {
                return state;
            }
        }
        throw new BriefingRefusedException("what-if-rail");
    }
}
