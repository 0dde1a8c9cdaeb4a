package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.briefing.document.KeyFigure;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.boiler.CrownWater;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.KnownFigures;

/** Finds where the crown of the train engine's firebox has least water over it: slope and braking count. */
final class CrownMaker {

    /** Time over which a change of speed counts: an estimate. */
    private static final double LEANS_S = 4;

    private final Workings workings;
    private final Run run;
    private final GradientProfile profile;

    CrownMaker(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
        this.profile = workings.model().request().road().track().gradients();
    }

    /** The sample with the least depth, and what it comes from. */
    private record Least(int sample, double depthM, double gradient, double accelerationMps2, boolean chimneyFirst) {}

    /** Returns the least depth of the run; empty where the class does not tell what it takes. */
    Optional<KeyFigure> figure() {
        return crown().map(crown -> {
            Least least = least(crown, true);
            return new KeyFigure(
                    "crown",
                    depth(crown, least),
                    List.of(Phrase.of("key-figure.at", workings.place(run.positionM(least.sample())))));
        });
    }

    /** Returns a danger where the slope alone lays the crown bare, else a caution where slope and braking together do. */
    Optional<Phrase> sentence() {
        return crown().flatMap(crown -> {
            Least onSlope = least(crown, false);
            if (onSlope.depthM() <= 0) {
                return Optional.of(phrase("today.crown-bare", onSlope));
            }
            Least braking = least(crown, true);
            return braking.depthM() <= 0 ? Optional.of(phrase("today.crown-bare-braking", braking)) : Optional.empty();
        });
    }

    private Phrase phrase(String kind, Least least) {
        String number = workings.inputs().engines().get(0).turn().engineNumber();
        return Phrase.of(kind, Term.text(number), workings.place(run.positionM(least.sample())));
    }

    /** Returns the keys of the figures of the train engine that are lacking. */
    static List<String> lacking(TrainInputs inputs) {
        KnownFigures known = known(inputs);
        List<String> lacking = new ArrayList<>();
        for (ClassFigure figure :
                List.of(ClassFigure.CROWN_WATER, ClassFigure.GLASS_RANGE, ClassFigure.CROWN_DISTANCE)) {
            if (known.si(figure).isEmpty()) {
                lacking.add(figure.key());
            }
        }
        return lacking;
    }

    private static KnownFigures known(TrainInputs inputs) {
        TrainInputs.EngineAtTrain engine = inputs.engines().get(0);
        return StockModel.known(engine.ofClass(), engine.engine());
    }

    private Optional<CrownWater> crown() {
        if (!lacking(workings.inputs()).isEmpty()) {
            return Optional.empty();
        }
        KnownFigures known = known(workings.inputs());
        Boiler boiler = workings.model().engine(0).parameters().boiler();
        return boiler.waterFullKg() <= boiler.waterLeastKg()
                ? Optional.empty()
                : Optional.of(new CrownWater(
                        known.si(ClassFigure.CROWN_WATER).orElseThrow(),
                        known.si(ClassFigure.GLASS_RANGE).orElseThrow(),
                        boiler.waterLeastKg(),
                        boiler.waterFullKg(),
                        known.si(ClassFigure.CROWN_DISTANCE).orElseThrow()));
    }

    private Least least(CrownWater crown, boolean withBraking) {
        Least least = at(crown, 0, withBraking);
        for (int i = 1; i + 1 < run.size(); i++) {
            Least here = at(crown, i, withBraking);
            least = here.depthM() < least.depthM() ? here : least;
        }
        return least;
    }

    private Least at(CrownWater crown, int sample, boolean withBraking) {
        double atM = run.positionM(sample);
        double acceleration = withBraking ? acceleration(sample) : 0;
        double gradient = profile.gradientAt(Math.min(atM, profile.endM()));
        boolean chimneyFirst = !workings.inputs()
                .content()
                .legs()
                .get(workings.inputs().path().at(atM).legNumber() - 1)
                .tenderFirst();
        return new Least(
                sample,
                crown.depthM(run.waterKg(sample), gradient, acceleration, chimneyFirst),
                gradient,
                acceleration,
                chimneyFirst);
    }

    /** Returns the mean over the seconds that the water takes to lean. */
    private double acceleration(int sample) {
        int later = sample;
        while (later + 1 < run.size() && run.timeS(later) < run.timeS(sample) + LEANS_S) {
            later++;
        }
        double seconds = run.timeS(later) - run.timeS(sample);
        return seconds > 0 ? (run.speedMps(later) - run.speedMps(sample)) / seconds : 0;
    }

    private Term depth(CrownWater crown, Least least) {
        double inchM = Units.metresFromInches(1);
        Step step = new Step(
                StepKind.FORMULA,
                "crown.depth",
                "(half + range * (water - (least + full) / 2) / (full - least)"
                        + " + way * distance * (gradient + acceleration / g)) / inch",
                List.of(
                        new Input("half", crown.halfGlassM(), "m", "class:crown-water"),
                        new Input("range", crown.rangeM(), "m", "class:glass-range"),
                        new Input("water", run.waterKg(least.sample()), "kg", "run:read"),
                        new Input("least", crown.leastKg(), "kg", "class:boiler-water"),
                        new Input("full", crown.fullKg(), "kg", "class:boiler-water"),
                        new Input("way", least.chimneyFirst() ? 1 : -1, "", "train:way-round"),
                        new Input("distance", crown.distanceM(), "m", "class:crown-distance"),
                        new Input("gradient", least.gradient(), "", "route:gradient"),
                        new Input("acceleration", least.accelerationMps2(), "m/s2", "run:read"),
                        new Input("g", Units.GRAVITY_MPS2, "m/s2", "UNITS"),
                        new Input("inch", inchM, "m", "UNITS")),
                least.depthM() / inchM,
                "in",
                "ARITHMETIC");
        return workings.book().put("crown.least", Figure.of(List.of(FigureBook.water(run, least.sample(), 0), step)));
    }
}
