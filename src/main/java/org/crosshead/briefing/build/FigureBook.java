package org.crosshead.briefing.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.HeatAccount;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.units.Units;

/** Collects the figures of a briefing by key, so that every number shown can say how it came about. */
final class FigureBook {

    private static final double KILO = 1_000;

    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final List<Engine> engines;

    /**
     * @param engines of the run, in its order
     */
    FigureBook(List<Engine> engines) {
        this.engines = List.copyOf(engines);
    }

    Map<String, Figure> figures() {
        return figures;
    }

    /** Returns the figure's value as a term that names it. */
    Term put(String key, Figure figure) {
        figures.put(key, figure);
        return Term.figure(figure.value(), figure.unit(), key);
    }

    /**
     * A value read from a run.
     *
     * @param name key of the step that brings it to the unit shown
     * @param value in SI
     * @param siPerUnit what one of the unit shown is in SI
     */
    record Reading(String name, double value, String siUnit, double siPerUnit, String unit) {

        Step inUnit() {
            return new Step(
                    StepKind.FORMULA,
                    name,
                    "read / one",
                    List.of(
                            new Input("read", value, siUnit, "run:read"),
                            new Input("one", siPerUnit, siUnit + " for 1 " + unit, "UNITS")),
                    value / siPerUnit,
                    unit,
                    "UNITS");
        }
    }

    /** Puts a speed that was read from the run, after the balance of forces there. */
    Term fromRun(String key, Reading reading, Run run, int sample) {
        return put(key, Figure.of(List.of(balance(run, sample), reading.inUnit())));
    }

    /** Puts the boiler pressure of the run at a sample, after the balances of heat and water there. */
    Term pressure(String key, Run run, int sample, int engine) {
        Reading reading = new Reading("run.pressure", run.pressurePa(sample, engine), "Pa", Units.paFromPsi(1), "psi");
        return put(key, Figure.of(List.of(heat(run, sample, engine), water(run, sample, engine), reading.inUnit())));
    }

    /** Two masses, kg. */
    record Masses(double firstKg, double secondKg) {}

    /** Puts how much one mass is more than another. */
    Term difference(String key, String name, Masses of, double unitKg, String unit) {
        Step step = new Step(
                StepKind.FORMULA,
                name,
                "(first - second) / unit",
                List.of(
                        new Input("first", of.firstKg(), "kg", "run:supplies"),
                        new Input("second", of.secondKg(), "kg", "run:supplies"),
                        new Input("unit", unitKg, "kg per " + unit, "UNITS")),
                (of.firstKg() - of.secondKg()) / unitKg,
                unit,
                "ARITHMETIC");
        return put(key, Figure.of(List.of(step)));
    }

    /** Puts the share of the glass that the water of the run fills, after the balance of water there. */
    Term glass(String key, LocomotiveParameters.Boiler boiler, Run run, int sample, int engine) {
        double waterKg = run.waterKg(sample, engine);
        double percent = boiler.glassShare(waterKg) * 100;
        Step step = new Step(
                StepKind.FORMULA,
                "run.glass",
                "(water - least) / max(1, full - least) * 100",
                List.of(
                        new Input("water", waterKg, "kg", "run:read"),
                        new Input("least", boiler.waterLeastKg(), "kg", "class:boiler-water"),
                        new Input("full", boiler.waterFullKg(), "kg", "class:boiler-water")),
                percent,
                "%",
                "ARITHMETIC");
        return put(key, Figure.of(List.of(water(run, sample, engine), step)));
    }

    /** Puts a value that is stored as it is shown. */
    Term given(String key, double value, String unit, String source) {
        Step step = new Step(
                StepKind.GIVEN,
                "given",
                "stored",
                List.of(new Input("stored", value, unit, source)),
                value,
                unit,
                "ARITHMETIC");
        return put(key, Figure.of(List.of(step)));
    }

    static Step balance(Run run, int sample) {
        int at = Math.min(sample, Math.max(0, run.size() - 2));
        double inertiaKg = run.inertiaKg(at);
        double pull = run.pullN(at);
        double resistance = run.resistanceN(at);
        double gravity = run.gravityN(at);
        double curve = run.curveN(at);
        double brake = run.brakeN(at);
        return new Step(
                StepKind.RUN,
                "run.balance",
                "(pull - resistance - gravity - curve - brake) / inertia",
                List.of(
                        new Input("pull", pull, "N", "run:pull"),
                        new Input("resistance", resistance, "N", "run:resistance"),
                        new Input("gravity", gravity, "N", "run:gravity"),
                        new Input("curve", curve, "N", "run:curve"),
                        new Input("brake", brake, "N", "run:brake"),
                        new Input("inertia", inertiaKg, "kg", "run:inertia")),
                (pull - resistance - gravity - curve - brake) / inertiaKg,
                "m/s2",
                "RUN");
    }

    /** The heat of the step that begins at a sample; nothing of an engine that does not work there. */
    private Step heat(Run run, int sample, int engine) {
        int at = Math.min(sample, Math.max(0, run.size() - 2));
        int next = Math.min(at + 1, run.size() - 1);
        double seconds = run.timeS(next) - run.timeS(at);
        boolean works = run.coalBurntKg(next, engine) > run.coalBurntKg(at, engine) && seconds > 0;
        double fed = run.tankUsedKg(next, engine) - run.tankUsedKg(at, engine);
        double coal = run.coalBurntKg(next, engine) - run.coalBurntKg(at, engine);
        HeatAccount account = works
                ? engines.get(engine)
                        .heat(
                                run.state(at, engine),
                                run.state(next, engine),
                                new Engine.Work(
                                        run.steamKgPerS(at, engine) + run.auxiliaryKgPerS(at, engine),
                                        coal / seconds,
                                        fed / seconds,
                                        run.steamKgPerS(at, engine) > 0,
                                        seconds))
                : new HeatAccount(0, 0, 0, 0, 0);
        return new Step(
                StepKind.RUN,
                "run.heat",
                "fired + fed - drawn - blown",
                List.of(
                        new Input("fired", account.firedJ() / KILO, "kJ", "run:fired"),
                        new Input("fed", account.fedJ() / KILO, "kJ", "run:feed-heat"),
                        new Input("drawn", account.drawnJ() / KILO, "kJ", "run:drawn"),
                        new Input("blown", account.blownJ() / KILO, "kJ", "run:blown")),
                account.storedJ() / KILO,
                "kJ",
                "RUN");
    }

    static Step water(Run run, int sample, int engine) {
        int at = Math.min(sample, Math.max(0, run.size() - 2));
        int next = Math.min(at + 1, run.size() - 1);
        double seconds = run.timeS(next) - run.timeS(at);
        double fed = run.tankUsedKg(next, engine) - run.tankUsedKg(at, engine);
        double steam = run.steamKgPerS(at, engine) + run.auxiliaryKgPerS(at, engine);
        return new Step(
                StepKind.RUN,
                "run.water",
                "fed - steam * seconds",
                List.of(
                        new Input("fed", fed, "kg", "run:fed"),
                        new Input("steam", steam, "kg/s", "run:steam"),
                        new Input("seconds", seconds, "s", "run:seconds")),
                fed - steam * seconds,
                "kg",
                "RUN");
    }
}
