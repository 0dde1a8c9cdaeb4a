package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.Stoking;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** Makes the points of the handling table out of what the crew of the forecast did. */
final class HandlingMaker {

    private static final double AT_ONCE_S = 12;
    private static final double TOLD_GRADIENT = 1.0 / 1_000;
    private static final double GRADIENT_LENGTH_M = 500;

    private final Workings workings;
    private final Run run;

    HandlingMaker(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
    }

    List<HandlingRow> rows() {
        List<HandlingRow> rows = new ArrayList<>();
        List<Change> changes = run.changes();
        @Nullable Handles before = null;
        boolean shut = false;
        boolean braked = false;
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            if (isFollowedAtOnce(changes, i) || (isShut(change) && shut)) {
                continue;
            }
            if (change instanceof Change.BrakeApplied) {
                if (braked) {
                    continue;
                }
                braked = true;
            } else if (change instanceof Change.HandlesSet) {
                shut = isShut(change);
                braked = braked && shut;
            }
            Optional<HandlingRow> row = row(change, before, rows.size() + 1);
            row.ifPresent(rows::add);
            if (change instanceof Change.HandlesSet set) {
                before = set.handles();
            }
        }
        return rows;
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

    private Optional<HandlingRow> row(Change change, @Nullable Handles before, int number) {
        if (change instanceof Change.HandlesSet set) {
            return set.handles().cause() == Cause.STANDING
                    ? Optional.empty()
                    : Optional.of(driver(set, before, number));
        }
        if (change instanceof Change.BrakeApplied applied) {
            String action = applied.forStop() ? "brake-stop" : "brake-limit";
            Cause cause = applied.forStop() ? Cause.STOP_AHEAD : Cause.LIMIT_AHEAD;
            return Optional.of(
                    row(number, sample(change), new Told(action, false, null, Phrase.of("action." + action), cause)));
        }
        if (change instanceof Change.TaskBegun task && task.engine() == 0 && isTold(task.stoking())) {
            String action = "fire-" + RoadMaker.lower(task.stoking().task());
            return Optional.of(row(
                    number,
                    sample(change),
                    new Told(
                            action,
                            true,
                            null,
                            Phrase.of("action." + action),
                            task.stoking().cause())));
        }
        return Optional.empty();
    }

    private static boolean isTold(Stoking stoking) {
        return stoking.task() != Stoking.Task.QUIET && stoking.task() != Stoking.Task.STEADY;
    }

    /** What is told at a point, before the place is looked up. */
    private record Told(
            String action, boolean forFireman, @Nullable Controls controls, Phrase words, Cause cause) {}

    private HandlingRow driver(Change.HandlesSet set, @Nullable Handles before, int number) {
        Controls now = set.handles().controls();
        String action = action(set.handles(), before);
        Term cutoff = Term.number(100 * now.cutoff(), "%");
        Phrase words = Phrase.of("action." + action, cutoff, regulator(now));
        return row(
                number,
                sample(set),
                new Told(
                        action,
                        false,
                        now,
                        words,
                        action.equals("cocks-shut")
                                ? Cause.BEATS_COUNTED
                                : set.handles().cause()));
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
        double glass = 100
                * (run.waterKg(sample) - boiler.waterLeastKg())
                / Math.max(1, boiler.waterFullKg() - boiler.waterLeastKg());
        Controls controls = told.controls();
        return new HandlingRow(
                number,
                workings.placeAt(atM),
                told.action(),
                told.forFireman(),
                controls == null ? null : controls.regulator(),
                controls == null ? null : controls.cutoff(),
                told.words(),
                reason(told, sample),
                workings.speed(key + "speed", sample),
                workings.book()
                        .fromBoiler(key + "pressure", Units.psiFromPa(run.pressurePa(sample)), "psi", run, sample, 0),
                workings.book().fromBoiler(key + "water", glass, "%", run, sample, 0),
                run.timeS(sample) / 60,
                Workings.none());
    }

    private Phrase reason(Told told, int sample) {
        double atM = run.positionM(sample);
        Term gradient = gradient(atM);
        Term pressure = Term.number(Units.psiFromPa(run.pressurePa(sample)), "psi");
        String kind = "reason." + (told.forFireman() ? "fire." : "") + RoadMaker.lower(told.cause());
        return switch (told.cause()) {
            case STARTING -> Phrase.of(kind, gradient);
            case BEATS_COUNTED -> Phrase.of(kind, Term.number(6, ""));
            case BOILER_LIMITS -> Phrase.of(kind, gradient, pressure);
            case BANK_BEGINS, BANK_AHEAD, SPEED_FALLS, SUMMIT_PASSED, FALL_BEGINS, RAIL_POOR ->
                Phrase.of(kind, gradient);
            case LIMIT_AHEAD, STOP_AHEAD -> Phrase.of(kind, ahead(sample, told.cause() == Cause.STOP_AHEAD));
            default -> Phrase.of(kind, pressure);
        };
    }

    /** Returns the next place where the train stands or is slowest, as the thing that is shut off or braked for. */
    private Term ahead(int sample, boolean stop) {
        for (int i = sample + 1; i + 1 < run.size(); i++) {
            boolean stands = run.speedMps(i) <= 0;
            boolean slowest = !stop && run.brakeN(i - 1) > 0 && run.brakeN(i) <= 0 && run.speedMps(i) > 0;
            if (stands || slowest) {
                return workings.place(run.positionM(i));
            }
        }
        return workings.place(run.endM());
    }

    private Term gradient(double atM) {
        double endM = Math.min(workings.inputs().path().lengthM(), atM + GRADIENT_LENGTH_M);
        double mean = workings.model().request().road().track().gradients().riseM(atM, endM) / Math.max(1, endM - atM);
        if (Math.abs(mean) < TOLD_GRADIENT) {
            return Term.text("gradient.level");
        }
        return Term.number(1 / mean, "1 in");
    }
}
