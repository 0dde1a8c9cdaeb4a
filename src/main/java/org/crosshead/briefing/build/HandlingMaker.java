package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.motion.Assistance;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.ShutWorth;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** Makes the points of the handling table out of what the crew of the forecast did. */
final class HandlingMaker {

    private static final double TOGETHER_S = 10;
    private static final double SAID_LATELY_S = 300;
    private static final double AT_ONCE_S = 12;
    private static final double PERCENT = 100;
    private static final double BRAKED_AGAIN_S = 45;
    private static final double TOLD_GRADIENT = 1.0 / 1_000;
    private static final double GRADIENT_LENGTH_M = 500;
    private static final double PACE_NEAR_MPS = 0.3;
    private static final double SAME_PACE_MPS = 0.5;
    private static final double SAME_PLACE_M = 60;

    private final Workings workings;
    private final List<BrakingRow> braking;
    private final Run run;

    /**
     * @param braking the braking points, so that the table never tells a later place than they do
     */
    HandlingMaker(Workings workings, List<BrakingRow> braking) {
        this.workings = workings;
        this.braking = braking;
        this.run = workings.run();
    }

    List<HandlingRow> rows() {
        List<Point> points = new ArrayList<>(points());
        for (int held : HeldStretches.beginnings(run)) {
            points.add(new Point(
                    held, new Told("brake-hold", false, null, Phrase.of("action.brake-hold"), Cause.FALL_BEGINS)));
        }
        points.addAll(assistance());
        points.addAll(paces());
        points.addAll(notes());
        points.sort(Comparator.comparingInt(Point::sample));
        List<HandlingRow> rows = new ArrayList<>();
        for (Point point : points) {
            rows.add(row(rows.size() + 1, point.sample(), point.told()));
        }
        return rows;
    }

    /** Where assisting engines begin and end their work. */
    private List<Point> assistance() {
        List<Point> points = new ArrayList<>();
        List<EngineAtWork> engines = workings.model().request().train().engines();
        for (int i = 1; i < engines.size(); i++) {
            Assistance range = engines.get(i).assistance();
            if (range.equals(Assistance.THROUGHOUT) || range.fromM() >= run.endM()) {
                continue;
            }
            Term number = Term.text(workings.inputs().engines().get(i).turn().engineNumber());
            Term end = workings.place(Math.min(range.toM(), run.endM()));
            points.add(new Point(
                    run.sampleAt(Math.max(range.fromM(), run.startM())),
                    new Told(
                            "assist-begin",
                            false,
                            null,
                            Phrase.of("action.assist-begin", number, end),
                            Cause.ASSISTED)));
            if (range.toM() <= run.endM()) {
                points.add(new Point(
                        run.sampleAt(range.toM()),
                        new Told("assist-end", false, null, Phrase.of("action.assist-end", number), Cause.ASSISTED)));
            }
        }
        return points;
    }

    /** A point before it is numbered. */
    private record Point(int sample, Told told) {}

    private List<Point> points() {
        List<Point> points = new ArrayList<>();
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
    private boolean shutsWithBrake(List<Point> points, Change change) {
        int last = points.size() - 1;
        while (last >= 0 && points.get(last).told().forFireman()) {
            last--;
        }
        if (last < 0 || !points.get(last).told().action().startsWith("brake-")) {
            return false;
        }
        Told brake = points.get(last).told();
        Controls controls = ((Change.HandlesSet) change).handles().controls();
        points.set(
                last,
                new Point(
                        points.get(last).sample(),
                        new Told(
                                brake.action(), false, controls, braked("shut-and-" + brake.action()), brake.cause())));
        return true;
    }

    /** What an inspector wants told at a place. */
    private List<Point> notes() {
        List<Point> points = new ArrayList<>();
        for (HandWork.Worked worked : workings.byHand()) {
            HandPointDraft draft = worked.point().draft();
            if (draft.kind() == HandPointDraft.Kind.NOTE && worked.applied() && worked.atM() <= run.endM()) {
                points.add(new Point(
                        run.sampleAt(worked.atM()),
                        new Told(
                                "note",
                                false,
                                null,
                                Phrase.of("action.note", Term.text(draft.note())),
                                Cause.SET_BY_HAND)));
            }
        }
        return points;
    }

    /** Returns why an inspector set it so, where one did. */
    private Optional<Phrase> byHand(Told told, double atM) {
        boolean note = told.action().equals("note");
        return workings.byHand().stream()
                .filter(worked -> worked.applied() && Math.abs(worked.atM() - atM) < SAME_PLACE_M)
                .filter(worked -> isSaidAt(worked.point().draft().kind(), told, note))
                .map(worked -> Phrase.of(
                        "reason.set-by-hand",
                        Term.text(worked.point().enteredBy()),
                        Term.text(worked.point().draft().reason())))
                .findFirst();
    }

    private static boolean isSaidAt(HandPointDraft.Kind kind, Told told, boolean note) {
        return note
                ? kind == HandPointDraft.Kind.NOTE
                : told.controls() != null && (kind == HandPointDraft.Kind.SET || kind == HandPointDraft.Kind.MOVED);
    }

    /** Speeds to be held, told where each is reached. */
    private List<Point> paces() {
        List<Point> points = new ArrayList<>();
        double toldMps = Double.NEGATIVE_INFINITY;
        for (Change change : run.changes()) {
            if (change instanceof Change.PaceKept kept
                    && Math.abs(kept.speedMps() - toldMps) > SAME_PACE_MPS
                    && isHeld(kept)) {
                toldMps = kept.speedMps();
                points.add(new Point(
                        reached(kept),
                        new Told(
                                "hold-speed",
                                false,
                                null,
                                Phrase.of("action.hold-speed", pace(kept)),
                                Cause.SPEED_REACHED)));
            }
        }
        return points;
    }

    private int reached(Change.PaceKept kept) {
        int at = sample(kept);
        while (at < run.size() - 1 && run.speedMps(at) < kept.speedMps() - PACE_NEAR_MPS) {
            at++;
        }
        return at;
    }

    /** Adds a point; a brake is told no later than its braking point, and steam is shut before it. */
    private void add(List<Point> points, int sample, Told told) {
        int at = told.action().startsWith("brake-") ? noLater(sample) : sample;
        for (int i = points.size() - 1; i >= 0 && points.get(i).sample() > at; i--) {
            if (isSteam(points.get(i).told())) {
                points.remove(i);
            } else {
                points.set(i, new Point(at, points.get(i).told()));
            }
        }
        if (told.forFireman() && saidLately(points, at, told)) {
            return;
        }
        int shut = told.action().startsWith("brake-") ? shutJustBefore(points, at) : -1;
        if (shut >= 0) {
            Told both = new Told(
                    told.action(),
                    false,
                    points.get(shut).told().controls(),
                    braked("shut-and-" + told.action()),
                    told.cause());
            points.remove(shut);
            points.add(new Point(at, both));
        } else {
            points.add(new Point(at, told));
        }
    }

    /** Returns the words of a brake application, with what the gauge shows where the brake has one. */
    private Phrase braked(String action) {
        return GaugeReading.of(workings.inputs())
                .map(reading -> reading.of(action))
                .orElseGet(() -> Phrase.of("action." + action));
    }

    /** Steam set anew beyond a place where the brake is told: there is nothing more to set by then. */
    private static boolean isSteam(Told told) {
        Controls controls = told.controls();
        return !told.forFireman() && controls != null && controls.regulator() > 0;
    }

    /** Returns whether the fireman was told the same a few minutes before, and nothing else since. */
    private boolean saidLately(List<Point> points, int sample, Told told) {
        for (int i = points.size() - 1; i >= 0; i--) {
            if (points.get(i).told().forFireman()) {
                return points.get(i).told().action().equals(told.action())
                        && run.timeS(sample) - run.timeS(points.get(i).sample()) < SAID_LATELY_S;
            }
        }
        return false;
    }

    /** Returns which point shuts steam where the brake is applied, or -1: the two are one thing to do. */
    private int shutJustBefore(List<Point> points, int sample) {
        for (int i = points.size() - 1; i >= 0; i--) {
            Point point = points.get(i);
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
            return set.handles().cause() == Cause.STANDING ? Optional.empty() : Optional.of(driver(set, before));
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

    /** Returns whether the train comes to a speed under steam before its next stop. */
    private boolean isHeld(Change.PaceKept kept) {
        int at = reached(kept);
        for (int i = sample(kept) + 1; i <= at; i++) {
            if (run.speedMps(i) <= 0) {
                return false;
            }
        }
        return run.speedMps(at) >= kept.speedMps() - PACE_NEAR_MPS && run.regulator(at) > 0;
    }

    /** Returns the speed to be held, as it is told where it is taken up. */
    private Term pace(Change.PaceKept kept) {
        double atM = run.positionM(sample(kept));
        return Term.number(
                workings.speeds().value(kept.speedMps(), atM), workings.speeds().unit(atM));
    }

    private static boolean isTold(Stoking stoking) {
        return stoking.task() != Stoking.Task.QUIET && stoking.task() != Stoking.Task.STEADY;
    }

    /** What is told at a point, before the place is looked up. */
    private record Told(
            String action, boolean forFireman, @Nullable Controls controls, Phrase words, Cause cause) {}

    private static Told driver(Change.HandlesSet set, @Nullable Handles before) {
        Controls now = set.handles().controls();
        String action = action(set.handles(), before);
        Phrase words = Phrase.of("action." + action, Term.number(100 * now.cutoff(), "%"), regulator(now));
        Cause cause = action.equals("cocks-shut")
                ? Cause.BEATS_COUNTED
                : set.handles().cause();
        return new Told(action, false, now, words, cause);
    }

    private static Term regulator(Controls controls) {
        if (controls.regulator() >= 1) {
            return Term.text("regulator.wide");
        }
        if (controls.regulator() > Controls.FIRST_VALVE) {
            return Term.text("regulator.eased");
        }
        return Term.text(controls.regulator() > 0 ? "regulator.first-valve" : "regulator.shut");
    }

    private static String action(Handles now, @Nullable Handles before) {
        Controls controls = now.controls();
        if (controls.regulator() <= 0) {
            return "shut-off";
        }
        if (now.cocksOpen()) {
            return "start";
        }
        if (before != null && before.cocksOpen()) {
            return "cocks-shut";
        }
        if (before == null || before.controls().regulator() <= 0) {
            return "open-up";
        }
        double was = before.controls().cutoff();
        if (controls.cutoff() < was) {
            return "notch-up";
        }
        if (controls.cutoff() > was) {
            return "let-out";
        }
        return controls.regulator() < before.controls().regulator() ? "ease-regulator" : "widen-regulator";
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
                reason(key, told, sample),
                workings.speed(key + "speed", sample),
                workings.book().fromBoiler(key + "pressure", pressure(sample), run, sample, 0),
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

    private FigureBook.Reading pressure(int sample) {
        return new FigureBook.Reading("run.pressure", run.pressurePa(sample), "Pa", Units.paFromPsi(1), "psi");
    }

    private Phrase reason(String key, Told told, int sample) {
        double atM = run.positionM(sample);
        if (told.action().equals("hold-speed")) {
            return Phrase.of("reason.hold-speed");
        }
        Optional<Phrase> byHand = byHand(told, atM);
        if (byHand.isPresent()) {
            return byHand.get();
        }
        Optional<ShutWorth> worth = told.action().equals("shut-off") ? worth(atM) : Optional.empty();
        if (worth.isPresent()) {
            return Phrase.of(
                    "reason.shut-worth",
                    ahead(sample, told.cause() == Cause.STOP_AHEAD),
                    workings.book().given(key + "lost", Math.max(0, worth.get().lostS()), "sec", "plan:worth"),
                    workings.book()
                            .given(
                                    key + "saved",
                                    Units.lbFromKg(Math.max(0, worth.get().savedKg())),
                                    "lb",
                                    "plan:worth"));
        }
        Term pressure = Term.figure(Units.psiFromPa(run.pressurePa(sample)), "psi", key + "pressure");
        String kind = "reason." + (told.forFireman() ? "fire." : "") + RoadMaker.lower(told.cause());
        return switch (told.cause()) {
            case ASSISTED ->
                Phrase.of(told.action().equals("assist-begin") ? "reason.assist-begin" : "reason.assist-end");
            case BEATS_COUNTED -> Phrase.of(kind, Term.number(RuleDriver.BEATS_WITH_COCKS_OPEN, ""));
            case BOILER_LIMITS -> Phrase.of(kind, gradient(key, atM), pressure);
            case STARTING, BANK_BEGINS, BANK_AHEAD, SPEED_FALLS, SUMMIT_PASSED, FALL_BEGINS, RAIL_POOR ->
                Phrase.of(kind, gradient(key, atM));
            case LIMIT_AHEAD, STOP_AHEAD ->
                Phrase.of(kind, ahead(sample, told.cause() == Cause.STOP_AHEAD && !told.forFireman()));
            default -> Phrase.of(kind, pressure);
        };
    }

    /** Returns what shutting steam at this place is worth, where the plan shuts it there for something ahead. */
    private Optional<ShutWorth> worth(double atM) {
        Plan plan = workings.plan();
        if (plan == null) {
            return Optional.empty();
        }
        for (int i = 0; i < plan.settings().size(); i++) {
            if (Math.abs(plan.settings().get(i).fromM() - atM) < 1) {
                return Optional.ofNullable(plan.shut().get(i));
            }
        }
        return Optional.empty();
    }

    /** Returns the words of an action; its cutoff can say where it was read. */
    private Phrase words(String key, Told told, int sample) {
        Controls controls = told.controls();
        if (controls == null || controls.regulator() <= 0) {
            return told.words();
        }
        FigureBook.Reading cutoff = new FigureBook.Reading("run.cutoff", controls.cutoff(), "", 1 / PERCENT, "%");
        Term term = workings.book().fromRun(key + "cutoff", cutoff, run, sample);
        return Phrase.of(told.words().kind(), term, regulator(controls));
    }

    /** Returns the next thing to be braked for, or the next stop, as the thing that steam is shut for. */
    private Term ahead(int sample, boolean stop) {
        double atM = run.positionM(sample);
        for (BrakingRow row : braking) {
            boolean stops = row.target().equals("stop");
            if (row.targetPlace().positionM() > atM + 1 && (stops || !stop)) {
                return Term.place(row.targetPlace());
            }
        }
        return workings.place(run.endM());
    }

    private Term gradient(String key, double atM) {
        double endM = Math.min(workings.inputs().path().lengthM(), atM + GRADIENT_LENGTH_M);
        double riseM = workings.model().request().road().track().gradients().riseM(atM, endM);
        double lengthM = endM - atM;
        if (Math.abs(riseM) < TOLD_GRADIENT * Math.max(1, lengthM)) {
            return Term.text("gradient.level");
        }
        Step step = new Step(
                StepKind.FORMULA,
                "gradient.ahead",
                "length / rise",
                List.of(
                        new Input("length", lengthM, "m", "route:gradient"),
                        new Input("rise", riseM, "m", "route:gradient")),
                lengthM / riseM,
                "1 in",
                "ARITHMETIC");
        return workings.book().put(key + "gradient", Figure.of(List.of(step)));
    }
}
