package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.Road;
import org.crosshead.diagram.StripModel.Fill;
import org.crosshead.diagram.StripModel.Setting;
import org.crosshead.diagram.StripModel.Stretch;

/** The stretches over which the forecast holds its controls, and those over which it brakes. */
final class ControlStretches {

    private static final double FIRST_VALVE_MOST = 0.4;
    private static final double HALF_OPEN_MOST = 0.9;

    private final Road.Forecast forecast;
    private final RoadWords words;

    ControlStretches(Road.Forecast forecast, RoadWords words) {
        this.forecast = forecast;
        this.words = words;
    }

    List<Setting> settings() {
        List<Setting> settings = new ArrayList<>();
        int first = 0;
        for (int i = 1; i < forecast.positionM().size(); i++) {
            boolean last = i == forecast.positionM().size() - 1;
            if (last || percent(i) != percent(first) || !regulator(i).equals(regulator(first))) {
                add(settings, first, i);
                first = i;
            }
        }
        return settings;
    }

    private void add(List<Setting> settings, int first, int end) {
        double regulator = forecast.regulator().get(first);
        long percent = percent(first);
        settings.add(new Setting(
                forecast.positionM().get(first),
                forecast.positionM().get(end),
                percent / 100.0,
                regulator,
                percent == 0 ? words.say("strip.regulator.shut") : String.valueOf(percent),
                percent == 0 ? "" : words.say("strip.regulator." + regulator(first))));
    }

    /** Returns the cutoff in whole per cent, 0 with the regulator shut. */
    private long percent(int index) {
        return forecast.regulator().get(index) <= 0
                ? 0
                : Math.round(forecast.cutoff().get(index) * 100);
    }

    private String regulator(int index) {
        double opening = forecast.regulator().get(index);
        if (opening <= 0) {
            return "shut";
        }
        return opening <= FIRST_VALVE_MOST ? "first" : opening <= HALF_OPEN_MOST ? "half" : "wide";
    }

    List<Stretch> braking() {
        List<Stretch> braking = new ArrayList<>();
        int first = -1;
        for (int i = 0; i < forecast.positionM().size(); i++) {
            boolean on = forecast.braking().get(i);
            if (on && first < 0) {
                first = i;
            } else if (!on && first >= 0) {
                braking.add(braked(first, i));
                first = -1;
            }
        }
        if (first >= 0 && first < forecast.positionM().size() - 1) {
            braking.add(braked(first, forecast.positionM().size() - 1));
        }
        return braking;
    }

    private Stretch braked(int first, int end) {
        double fromM = forecast.positionM().get(first);
        return new Stretch(fromM, forecast.positionM().get(end), Fill.HATCHED, words.say("strip.brake"));
    }
}
