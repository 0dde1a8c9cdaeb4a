package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.briefing.document.FiremanPlan.Stretch;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.CallTime;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;
import org.crosshead.working.TrainDraft;

/** Makes the fireman's half: rounds of firing, injector and blower along the road, and a row of work for each stretch between calls. */
final class FiremanMaker {

    /** A round of firing, some eight shovels: from memory. */
    private static final double ROUND_KG = Units.kgFromLb(100);

    private static final double FEEDS_SHARE = 0.12;
    private static final double BLOWER_OPEN = 0.15;
    private static final double GAP_S = 90;
    private static final double LEAST_S = 60;
    private static final double THIN = 0.6;
    private static final double THICK = 1.05;
    private static final double OPEN = 0.8;
    private static final double HALF = 0.4;
    /** A stand so long asks for room in the boiler: a rule of this project. */
    private static final double LONG_STAND_S = 180;

    private final Workings workings;
    private final Run run;

    FiremanMaker(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
    }

    FiremanPlan made() {
        double most = engine().feedMaxKgPerS(engine().parameters().boiler().pressureMaxPa());
        return new FiremanPlan(
                rounds(),
                stretches(i -> feedKgPerS(i) > FEEDS_SHARE * most),
                stretches(i -> run.blower(i, 0) > BLOWER_OPEN),
                rows());
    }

    private Engine engine() {
        return workings.model().engine(0);
    }

    private double feedKgPerS(int sample) {
        double seconds = run.timeS(sample + 1) - run.timeS(sample);
        return seconds <= 0 ? 0 : (run.tankUsedKg(sample + 1, 0) - run.tankUsedKg(sample, 0)) / seconds;
    }

    private List<Double> rounds() {
        List<Double> rounds = new ArrayList<>();
        double due = ROUND_KG;
        for (int i = 0; i < run.size(); i++) {
            while (run.coalBurntKg(i, 0) >= due) {
                rounds.add((double) Math.round(run.positionM(i)));
                due += ROUND_KG;
            }
        }
        return rounds;
    }

    /** Returns where something holds: short breaks count as none, and what is short itself is left out. */
    private List<Stretch> stretches(IntPredicate holds) {
        List<int[]> spans = new ArrayList<>();
        for (int i = 0; i + 1 < run.size(); i++) {
            if (!holds.test(i)) {
                continue;
            }
            int last = spans.size() - 1;
            if (last >= 0 && run.timeS(i) - run.timeS(spans.get(last)[1]) < GAP_S) {
                spans.get(last)[1] = i + 1;
            } else {
                spans.add(new int[] {i, i + 1});
            }
        }
        return spans.stream()
                .filter(span -> run.timeS(span[1]) - run.timeS(span[0]) >= LEAST_S)
                .map(span -> new Stretch(Math.round(run.positionM(span[0])), Math.round(run.positionM(span[1]))))
                .filter(stretch -> stretch.toM() > stretch.fromM())
                .toList();
    }

    private List<FiremanPlan.Row> rows() {
        List<FiremanPlan.Row> rows = new ArrayList<>();
        List<CallTime> times = run.callTimes();
        for (int i = 0; i + 1 < times.size(); i++) {
            rows.add(row(i + 1, run.sampleAtTime(times.get(i).departureS()), times.get(i), times.get(i + 1)));
        }
        return rows;
    }

    private FiremanPlan.Row row(int number, int from, CallTime begins, CallTime ends) {
        String key = "f" + number + ".";
        int to = run.sampleAtTime(ends.arrivalS());
        int seen = Math.max(from, to - 1);
        List<TrainDraft.Call> calls = workings.inputs().content().calls();
        double fireKg = run.state(from, 0).fireKg() / engine().furnace().fullKg();
        return new FiremanPlan.Row(
                calls.get(begins.call()).place(),
                calls.get(ends.call()).place(),
                workings.book()
                        .difference(
                                key + "coal",
                                "fireman.between",
                                new FigureBook.Masses(run.coalBurntKg(to, 0), run.coalBurntKg(from, 0)),
                                Units.kgFromLb(1),
                                "lb"),
                workings.book()
                        .difference(
                                key + "feed",
                                "fireman.between",
                                new FigureBook.Masses(run.tankUsedKg(to, 0), run.tankUsedKg(from, 0)),
                                Units.kgFromGallons(1),
                                "gal"),
                fireKg < THIN ? "thin" : fireKg < THICK ? "even" : "thick",
                dampers(from, to),
                workings.book().pressure(key + "pressure", run, seen, 0),
                workings.book().glass(key + "glass", engine().parameters().boiler(), run, seen, 0),
                say(from, to, ends));
    }

    /** Returns how the dampers stand, as a mean over the time. */
    private String dampers(int from, int to) {
        double sum = 0;
        double seconds = 0;
        for (int i = from; i < to; i++) {
            double stepS = run.timeS(i + 1) - run.timeS(i);
            sum += run.dampers(i, 0) * stepS;
            seconds += stepS;
        }
        double mean = seconds > 0 ? sum / seconds : 1;
        return mean >= OPEN ? "open" : mean >= HALF ? "half" : "nearly-shut";
    }

    /** What is said at a place. */
    private record Said(double atM, Phrase phrase) {}

    private List<Phrase> say(int from, int to, CallTime ends) {
        double fromM = run.positionM(from);
        double toM = run.positionM(to);
        List<Said> said = new ArrayList<>();
        bank(from, to).ifPresent(said::add);
        shut(from, to, said);
        for (PathFeature feature : workings.inputs().path().features()) {
            if (feature.fromM() > fromM
                    && feature.fromM() <= toM
                    && feature.feature().kind() == FeatureKind.TUNNEL) {
                said.add(new Said(
                        feature.fromM(),
                        Phrase.of("fireman.tunnel", Term.text(feature.feature().name()))));
            }
        }
        String place = workings.inputs().content().calls().get(ends.call()).place();
        boolean stops = workings.model().request().calls().get(ends.call()).stops();
        if (stops) {
            said.add(new Said(toM, Phrase.of("fireman.no-smoke", Term.text(place))));
        }
        if (ends.departureS() - ends.arrivalS() >= LONG_STAND_S) {
            said.add(new Said(
                    toM,
                    Phrase.of(
                            "fireman.room",
                            Term.text(place),
                            Term.number((ends.departureS() - ends.arrivalS()) / 60, "min"))));
        }
        return said.stream()
                .sorted((a, b) -> Double.compare(a.atM(), b.atM()))
                .map(Said::phrase)
                .toList();
    }

    /** Says by where the boiler is to be full, where a bank follows for which it is filled. */
    private Optional<Said> bank(int from, int to) {
        int fullest = -1;
        for (Change change : run.changes()) {
            boolean builds = change instanceof Change.TaskBegun task
                    && task.engine() == 0
                    && task.sample() >= from
                    && task.sample() < to
                    && task.stoking().task() == Stoking.Task.BUILD_UP;
            if (builds) {
                fullest = fullest(change.sample(), to);
            }
        }
        return fullest < 0
                ? Optional.empty()
                : Optional.of(new Said(
                        run.positionM(fullest), Phrase.of("fireman.full-by", workings.place(run.positionM(fullest)))));
    }

    private int fullest(int from, int to) {
        int found = from;
        for (int i = from; i <= to; i++) {
            found = run.waterKg(i) > run.waterKg(found) ? i : found;
        }
        return found;
    }

    /** Says where the blower is to be on before steam is shut. */
    private void shut(int from, int to, List<Said> said) {
        for (Change change : run.changes()) {
            boolean shuts = change instanceof Change.HandlesSet set
                    && set.sample() > from
                    && set.sample() < to
                    && set.handles().controls().regulator() <= 0
                    && run.regulator(Math.max(0, set.sample() - 1)) > 0;
            if (shuts) {
                double atM = run.positionM(change.sample());
                said.add(new Said(atM, Phrase.of("fireman.blower", workings.place(atM))));
            }
        }
    }
}
