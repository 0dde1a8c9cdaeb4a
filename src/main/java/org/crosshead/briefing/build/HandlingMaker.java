package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.jspecify.annotations.Nullable;

/** Makes the rows of the handling table out of what the crew of the forecast did and what else is to be told. */
final class HandlingMaker {

    private static final double PERCENT = 100;

    private final Workings workings;
    private final List<BrakingRow> braking;
    private final PointReasons reasons;
    private final Run run;

    /**
     * @param braking the braking points, so that the table never tells a later place than they do
     */
    HandlingMaker(Workings workings, List<BrakingRow> braking) {
        this.workings = workings;
        this.braking = braking;
        this.reasons = new PointReasons(workings, braking);
        this.run = workings.run();
    }

    List<HandlingRow> rows() {
        List<Told.Point> points = new ArrayList<>(new CrewPoints(workings, braking).points());
        points.addAll(new RoadPoints(workings).points());
        points.sort(Comparator.comparingInt(Told.Point::sample));
        List<HandlingRow> rows = new ArrayList<>();
        for (Told.Point point : points) {
            rows.add(row(rows.size() + 1, point.sample(), point.told()));
        }
        return rows;
    }

    private HandlingRow row(int number, int sample, Told told) {
        String key = "h" + number + ".";
        double atM = run.positionM(sample);
        Boiler boiler = workings.model().engine(0).parameters().boiler();
        Controls controls = told.controls();
        return new HandlingRow(
                number,
                workings.placeAt(atM),
                told.action(),
                told.forFireman(),
                controls == null ? null : controls.regulator(),
                controls == null ? null : controls.cutoff(),
                words(key, told, sample),
                reasons.reason(key, told, sample),
                workings.speed(key + "speed", sample),
                workings.book().pressure(key + "pressure", run, sample, 0),
                workings.book().glass(key + "water", boiler, run, sample, 0),
                run.timeS(sample) / 60,
                ifNot(key, told, sample));
    }

    /** Returns what to do if it is not as planned, once the train has been started. */
    private @Nullable Phrase ifNot(String key, Told told, int sample) {
        Controls controls = told.controls();
        boolean started = controls != null
                && !told.action().equals("start")
                && !told.action().equals("cocks-shut");
        return started && controls != null
                ? new Deviations(workings).told(key, controls, sample).orElse(null)
                : null;
    }

    /** Returns the words of an action; its cutoff can say where it was read. */
    private Phrase words(String key, Told told, int sample) {
        Controls controls = told.controls();
        if (controls == null || controls.regulator() <= 0) {
            return told.words();
        }
        FigureBook.Reading cutoff = new FigureBook.Reading("run.cutoff", controls.cutoff(), "", 1 / PERCENT, "%");
        Term term = workings.book().fromRun(key + "cutoff", cutoff, run, sample);
        return Phrase.of(told.words().kind(), term, Told.regulator(controls));
    }
}
