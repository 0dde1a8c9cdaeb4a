package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.traction.Controls;
import org.jspecify.annotations.Nullable;

/** The points that the crew of the forecast make: what they change, put together and told no later than a braking point. */
final class CrewPoints {

    private static final double TOGETHER_S = 10;
    private static final double SAID_LATELY_S = 300;
    private static final double AT_ONCE_S = 12;
    private static final double BRAKED_AGAIN_S = 45;

    private final Workings workings;
    private final List<BrakingRow> braking;
    private final Run run;

    /**
     * @param braking the braking points, so that the table never tells a later place than they do
     */
    CrewPoints(Workings workings, List<BrakingRow> braking) {
        this.workings = workings;
        this.braking = braking;
        this.run = workings.run();
    }

    /** Returns them in running order. */
    List<Told.Point> points() {
        List<Told.Point> points = new ArrayList<>();
        List<Change> changes = run.changes();
        @Nullable Handles before = null;
        boolean shut = false;
        double releasedS = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            double timeS = run.timeS(sample(change));
            if (change instanceof Change.BrakeReleased) {
                releasedS = timeS;
            }
            boolean again = change instanceof Change.BrakeApplied && shut && timeS - releasedS < BRAKED_AGAIN_S;
            if (again || isFollowedAtOnce(changes, i) || (isShut(change) && shut)) {
                continue;
            }
            if (isShut(change) && isBrakeAt(changes, i - 1, sample(change)) && shutsWithBrake(points, change)) {
                shut = true;
                before = ((Change.HandlesSet) change).handles();
                continue;
            }
            told(change, before).ifPresent(told -> add(points, sample(change), told));
            if (change instanceof Change.HandlesSet set) {
                shut = isShut(change);
                before = set.handles();
            }
        }
        return points;
    }

    private boolean isBrakeAt(List<Change> changes, int index, int sample) {
        return index >= 0 && changes.get(index) instanceof Change.BrakeApplied && sample(changes.get(index)) == sample;
    }

    /** Tells in the brake's point that steam is shut with it; false if the last point is no brake. */
    private boolean shutsWithBrake(List<Told.Point> points, Change change) {
        int last = points.size() - 1;
        while (last >= 0 && points.get(last).told().forFireman()) {
            last--;
        }
        if (last < 0 || !points.get(last).told().brakes()) {
            return false;
        }
        Told brake = points.get(last).told();
        Controls controls = ((Change.HandlesSet) change).handles().controls();
        points.set(
                last,
                new Told.Point(
                        points.get(last).sample(),
                        new Told(
                                brake.action(), false, controls, braked("shut-and-" + brake.action()), brake.cause())));
        return true;
    }

    /** Adds a point; a brake is told no later than its braking point, and steam is shut before it. */
    private void add(List<Told.Point> points, int sample, Told told) {
        int at = told.brakes() ? noLater(sample) : sample;
        for (int i = points.size() - 1; i >= 0 && points.get(i).sample() > at; i--) {
            if (points.get(i).told().setsSteam()) {
                points.remove(i);
            } else {
                points.set(i, new Told.Point(at, points.get(i).told()));
            }
        }
        if (told.forFireman() && saidLately(points, at, told)) {
            return;
        }
        int shut = told.brakes() ? shutJustBefore(points, at) : -1;
        if (shut >= 0) {
            Told both = new Told(
                    told.action(),
                    false,
                    points.get(shut).told().controls(),
                    braked("shut-and-" + told.action()),
                    told.cause());
            points.remove(shut);
            points.add(new Told.Point(at, both));
        } else {
            points.add(new Told.Point(at, told));
        }
    }

    /** Returns the words of a brake application, with what the gauge shows where the brake has one. */
    private Phrase braked(String action) {
        return GaugeReading.of(workings.inputs())
                .map(reading -> reading.of(action))
                .orElseGet(() -> Phrase.of("action." + action));
    }

    /** Returns whether the fireman was told the same a few minutes before, and nothing else since. */
    private boolean saidLately(List<Told.Point> points, int sample, Told told) {
        for (int i = points.size() - 1; i >= 0; i--) {
            if (points.get(i).told().forFireman()) {
                return points.get(i).told().action().equals(told.action())
                        && run.timeS(sample) - run.timeS(points.get(i).sample()) < SAID_LATELY_S;
            }
        }
        return false;
    }

    /** Returns which point shuts steam where the brake is applied, or -1: the two are one thing to do. */
    private int shutJustBefore(List<Told.Point> points, int sample) {
        for (int i = points.size() - 1; i >= 0; i--) {
            Told.Point point = points.get(i);
            if (!point.told().forFireman()) {
                boolean near = run.timeS(sample) - run.timeS(point.sample()) < TOGETHER_S;
                return near && point.told().action().equals("shut-off") ? i : -1;
            }
        }
        return -1;
    }

    private int noLater(int sample) {
        double atM = run.positionM(sample);
        int least = 0;
        for (int i = sample; i > 0; i--) {
            if (run.speedMps(i) <= 0) {
                least = i;
                break;
            }
        }
        for (BrakingRow row : braking) {
            if (row.targetPlace().positionM() > atM) {
                double brakeAtM = row.brakeAt().positionM();
                int earlier = brakeAtM >= run.startM() && brakeAtM < atM ? run.sampleAt(brakeAtM) : sample;
                return Math.max(least, Math.min(sample, earlier));
            }
        }
        return sample;
    }

    private static boolean isShut(Change change) {
        return change instanceof Change.HandlesSet set
                && set.handles().controls().regulator() <= 0
                && set.handles().cause() != Cause.STANDING;
    }

    /** A setting that is changed again within seconds, the cocks aside, is no point of its own. */
    private boolean isFollowedAtOnce(List<Change> changes, int index) {
        if (!(changes.get(index) instanceof Change.HandlesSet set)) {
            return false;
        }
        for (int i = index + 1; i < changes.size(); i++) {
            if (changes.get(i) instanceof Change.HandlesSet next) {
                double apartS = run.timeS(sample(next)) - run.timeS(sample(set));
                return apartS < AT_ONCE_S
                        && set.handles().cocksOpen() == next.handles().cocksOpen();
            }
        }
        return false;
    }

    private int sample(Change change) {
        return Math.min(change.sample(), run.size() - 1);
    }

    private Optional<Told> told(Change change, @Nullable Handles before) {
        if (change instanceof Change.HandlesSet set) {
            return set.handles().cause() == Cause.STANDING ? Optional.empty() : Optional.of(Told.driver(set, before));
        }
        if (change instanceof Change.BrakeApplied applied) {
            String action = applied.forStop() ? "brake-stop" : "brake-limit";
            Cause cause = applied.forStop() ? Cause.STOP_AHEAD : Cause.LIMIT_AHEAD;
            return Optional.of(new Told(action, false, null, braked(action), cause));
        }
        if (change instanceof Change.TaskBegun task && task.engine() == 0 && isTold(task.stoking())) {
            String action = "fire-" + RoadMaker.lower(task.stoking().task());
            return Optional.of(new Told(
                    action,
                    true,
                    null,
                    Phrase.of("action." + action),
                    task.stoking().cause()));
        }
        return Optional.empty();
    }

    private static boolean isTold(Stoking stoking) {
        return stoking.task() != Stoking.Task.QUIET && stoking.task() != Stoking.Task.STEADY;
    }
}
