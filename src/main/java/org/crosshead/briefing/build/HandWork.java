package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.crosshead.briefing.HandPoint;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.HandPointDraft.Kind;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.HandChange;
import org.crosshead.kernel.plan.HandedPlan;
import org.crosshead.kernel.plan.Plan;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.jspecify.annotations.Nullable;

/**
 * A run with what an inspector changed in its plan by hand.
 *
 * @param worked in the order of entry
 */
record HandWork(HandledRun run, List<Worked> worked) {

    HandWork {
        worked = List.copyOf(worked);
    }

    /**
     * A change and what came of it.
     *
     * @param atM where it is told: of a move where it is moved to; NaN where the path does not pass it
     * @param limitM where the limit is broken for which it is left out; NaN where none is
     */
    record Worked(HandPoint point, String fate, double atM, double coalKg, double timeS, double limitM) {

        boolean applied() {
            return fate.equals("applied");
        }
    }

    static HandWork of(RunRequest request, HandledRun run, TrainInputs inputs) {
        return new Maker(request, run, inputs).made();
    }

    private static final class Maker {

        /** Where the class lays down none, no change by hand may take the boiler lower than this share: a rule of this project. */
        private static final double PRESSURE_LEAST = 0.7;

        private final RunRequest request;
        private final TrainInputs inputs;
        private final List<Worked> worked = new ArrayList<>();
        private HandledRun run;

        Maker(RunRequest request, HandledRun run, TrainInputs inputs) {
            this.request = request;
            this.run = run;
            this.inputs = inputs;
        }

        HandWork made() {
            inputs.byHand().forEach(this::work);
            return new HandWork(run, worked);
        }

        private void work(HandPoint point) {
            HandPointDraft draft = point.draft();
            OptionalDouble at = pathM(draft.at());
            OptionalDouble told = draft.kind() == Kind.MOVED ? pathM(draft.to()) : at;
            Plan plan = run.plan();
            if (at.isEmpty() || told.isEmpty()) {
                leave(point, "off-the-path", Double.NaN);
            } else if (draft.kind() == Kind.NOTE) {
                worked.add(new Worked(point, "applied", told.getAsDouble(), 0, 0, Double.NaN));
            } else if (plan == null) {
                leave(point, "no-plan", told.getAsDouble());
            } else {
                change(point, plan, change(draft, at.getAsDouble(), told.getAsDouble()), told.getAsDouble());
            }
        }

        private void leave(HandPoint point, String fate, double atM) {
            worked.add(new Worked(point, fate, atM, 0, 0, Double.NaN));
        }

        private void change(HandPoint point, Plan plan, HandChange change, double toldM) {
            Boiler boiler =
                    request.train().engines().get(0).engine().parameters().boiler();
            double leastPa = boiler.pressureLeastPa().orElse(PRESSURE_LEAST * boiler.pressureMaxPa());
            HandedPlan handed = HandedPlan.of(request, plan, List.of(change), leastPa);
            HandedPlan.Done done = handed.done().get(0);
            String fate = done.fate().name().toLowerCase(Locale.ROOT).replace('_', '-');
            boolean applied = done.fate() == HandedPlan.Fate.APPLIED;
            worked.add(
                    new Worked(point, fate, toldM, done.coalKg(), done.timeS(), applied ? Double.NaN : done.limitM()));
            run = new HandledRun(handed.plan().outcome(), handed.plan(), run.needsMomentum());
        }

        private static HandChange change(HandPointDraft draft, double atM, double toldM) {
            return switch (draft.kind()) {
                case MOVED -> new HandChange.Moved(atM, toldM);
                case STRUCK -> new HandChange.Struck(atM);
                case SET, NOTE -> new HandChange.Added(atM, controls(draft));
            };
        }

        private static Controls controls(HandPointDraft draft) {
            Double cutoff = draft.cutoff();
            double regulator = Objects.requireNonNull(draft.regulator());
            return new Controls(regulator, regulator <= 0 || cutoff == null ? 0 : cutoff);
        }

        private OptionalDouble pathM(@Nullable HandSpot spot) {
            return spot == null
                    ? OptionalDouble.empty()
                    : inputs.path().pathM(spot.routeCode(), spot.measure(), spot.pathM());
        }
    }
}
