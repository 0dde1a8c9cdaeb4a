package org.crosshead.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Firing;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The equations of a run with handles and firing held, given to a general library: over the way the square of the speed, the time,
 * pressure, water and fire. How the boiler changes is read off a step of a thousandth of a second. Split where the gradient under the
 * train changes its law, for an integrator of high order loses it there.
 */
public final class ContinuousRun {

    private static final double INSTANT_S = 1e-3;
    private static final double STEP_LEAST_M = 1e-6;
    private static final double STEP_MOST_M = 5_000;

    private final RunRequest request;
    private final Controls controls;
    private final Firing firing;
    private final Engine engine;
    private final GradientProfile profile;
    private long evaluations;

    public ContinuousRun(RunRequest request, Controls controls, Firing firing) {
        this.request = request;
        this.controls = controls;
        this.firing = firing;
        engine = request.train().engines().get(0).engine();
        profile = request.road().track().gradients();
    }

    /** Returns the time from one sample of a run to another, by a relative tolerance. */
    public double timeS(Run run, int from, int to, double tolerance) {
        double v = run.speedMps(from);
        EngineState state = run.state(from, 0);
        double[] y = {v * v / 2, 0, state.pressurePa(), state.waterKg(), state.fireKg()};
        double[] scale = {100, 100, 1e6, 1e4, 1e3};
        double[] absolute = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            absolute[i] = tolerance * scale[i];
        }
        double[] relative = new double[y.length];
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(STEP_LEAST_M, STEP_MOST_M, absolute, relative);
        Equations equations = new Equations(run.inertiaKg(from), run.massKg(from), state);
        double atM = run.positionM(from);
        for (double nextM : breaks(atM, run.positionM(to))) {
            y = integrator.integrate(equations, new ODEState(atM, y), nextM).getPrimaryState();
            atM = nextM;
        }
        evaluations = equations.evaluations;
        return y[1];
    }

    /** Returns how often the equations were worked out in the last run. */
    public long evaluations() {
        return evaluations;
    }

    private List<Double> breaks(double fromM, double toM) {
        List<Double> breaks = new ArrayList<>();
        double lengthM = request.train().body().lengthM();
        for (double boundaryM : profile.boundariesM()) {
            breaks.add(boundaryM);
            breaks.add(boundaryM + lengthM);
        }
        breaks.add(toM);
        return breaks.stream()
                .filter(atM -> atM > fromM + 1e-6 && atM <= toM)
                .sorted()
                .distinct()
                .toList();
    }

    /** The right-hand sides. */
    private final class Equations implements OrdinaryDifferentialEquation {

        private final double inertiaKg;
        private final double massKg;
        private final EngineState like;
        private long evaluations;

        Equations(double inertiaKg, double massKg, EngineState like) {
            this.inertiaKg = inertiaKg;
            this.massKg = massKg;
            this.like = like;
        }

        @Override
        public int getDimension() {
            return 5;
        }

        @Override
        public double[] computeDerivatives(double atM, double[] y) {
            evaluations++;
            double v = Math.sqrt(2 * Math.max(0.01, y[0]));
            EngineState state = new EngineState(y[2], y[3], y[4], false, like.suppliesShare());
            Pull pull = engine.pull(state, controls, v, RailState.DRY);
            EngineState then = engine.after(state, pull.steamKgPerS(), firing, INSTANT_S);
            double slope = profile.meanGradient(atM, request.train().body().lengthM());
            double forceN =
                    pull.forceN() - request.train().body().resistance().forceN(v) - massKg * Units.GRAVITY_MPS2 * slope;
            double perM = 1 / (INSTANT_S * v);
            return new double[] {
                forceN / inertiaKg,
                1 / v,
                (then.pressurePa() - state.pressurePa()) * perM,
                (then.waterKg() - state.waterKg()) * perM,
                (then.fireKg() - state.fireKg()) * perM
            };
        }
    }
}
