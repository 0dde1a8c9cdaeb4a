package org.crosshead.briefing.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.handling.RuleDriver;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.plan.ShutWorth;
import org.crosshead.kernel.units.Units;

/** Why something is told at a point: the road, the boiler, what lies ahead, or an inspector's own reason. */
final class PointReasons {

    private static final double TOLD_GRADIENT = 1.0 / 1_000;
    private static final double GRADIENT_LENGTH_M = 500;
    private static final double SAME_PLACE_M = 60;

    private final Workings workings;
    private final List<BrakingRow> braking;
    private final Run run;

    PointReasons(Workings workings, List<BrakingRow> braking) {
        this.workings = workings;
        this.braking = braking;
        this.run = workings.run();
    }

    /**
     * Returns the reason.
     *
     * @param key begins the keys of its figures
     */
    Phrase reason(String key, Told told, int sample) {
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

    /** Returns why an inspector set it so, where one did: the nearest change, however far the setting was made from its place. */
    private Optional<Phrase> byHand(Told told, double atM) {
        boolean note = told.action().equals("note");
        double reachM = told.cause() == Cause.SET_BY_HAND ? Double.POSITIVE_INFINITY : SAME_PLACE_M;
        return workings.byHand().stream()
                .filter(worked -> worked.applied() && Math.abs(worked.atM() - atM) < reachM)
                .filter(worked -> isSaidAt(worked.point().draft().kind(), told, note))
                .min(Comparator.comparingDouble(worked -> Math.abs(worked.atM() - atM)))
                .map(worked -> Phrase.of(
                        "reason.set-by-hand",
                        Term.text(worked.point().enteredBy()),
                        Term.text(worked.point().draft().reason())));
    }

    private static boolean isSaidAt(HandPointDraft.Kind kind, Told told, boolean note) {
        return note
                ? kind == HandPointDraft.Kind.NOTE
                : told.controls() != null && (kind == HandPointDraft.Kind.SET || kind == HandPointDraft.Kind.MOVED);
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
