package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.KnownFigures;

/** Checks a class of engines: its texts, its figures one by one, and those that must agree with each other. */
final class LocomotiveClassRules {

    private static final Set<BrakeKind> TRAIN_BRAKES = EnumSet.of(BrakeKind.VACUUM, BrakeKind.AIR, BrakeKind.NONE);

    private LocomotiveClassRules() {}

    /** Greatest stroke as a share of the driving wheel: a longer one brings the crank pin to the tread. Plausibility, own rule. */
    private static final double STROKE_OF_WHEEL = 0.75;

    /** Greatest grate as a share of the heating surface: usual ones are 1/80 to 1/30. Plausibility, own rule. */
    private static final double GRATE_OF_SURFACE = 1.0 / 10;

    /** Least share of the weight on the coupled wheels that is left with tank and bunker empty. Plausibility, own rule. */
    private static final double ADHESIVE_LEAST = 0.5;

    static List<StockProblem> problems(LocomotiveClassDraft draft, String reason) {
        TextRules texts = TextRules.with(reason)
                .code("code", draft.code())
                .needed("name", draft.name(), TextRules.NAME_LENGTH_MAX)
                .optional("description", draft.description(), TextRules.TEXT_LENGTH_MAX);
        for (int i = 0; i < draft.notes().size(); i++) {
            texts.needed("notes[" + i + "].text", draft.notes().get(i).text(), TextRules.TEXT_LENGTH_MAX);
        }
        List<StockProblem> problems = new ArrayList<>(texts.problems());
        if (!TRAIN_BRAKES.contains(draft.trainBrake())) {
            problems.add(refused("trainBrake", "train-brake"));
        }
        List<StockProblem> singly = FigureRules.problems(draft.figures(), ClassFigure::keyed);
        problems.addAll(singly);
        problems.addAll(tender(draft));
        if (singly.isEmpty()) {
            problems.addAll(agreement(draft.valveFamily(), StoredFigures.stated(draft.figures())));
        }
        return problems;
    }

    private static List<StockProblem> tender(LocomotiveClassDraft draft) {
        if (draft.tenderEngine()) {
            return List.of();
        }
        return draft.figures().stream()
                .filter(figure -> figure.value() != null)
                .filter(figure -> ClassFigure.keyed(figure.key())
                        .filter(ClassFigure::ofTender)
                        .isPresent())
                .map(figure -> refused("figures." + figure.key(), "no-tender"))
                .toList();
    }

    /** Checks figures that bound each other; used for a class, and for a class with an engine's own figures in place. */
    static List<StockProblem> agreement(ValveFamily family, KnownFigures known) {
        List<StockProblem> problems = new ArrayList<>(ValveDimensions.problems(family, known));
        notAbove(known, ClassFigure.LEAST_CUTOFF, ClassFigure.FULL_GEAR_CUTOFF, "least-above-full")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.BOILER_WATER_LEAST, ClassFigure.BOILER_WATER_FULL, "water-least-above-full")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.ADHESIVE_WEIGHT, ClassFigure.ENGINE_WEIGHT, "adhesive-above-engine")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.ADHESIVE_WEIGHT_EMPTY, ClassFigure.ADHESIVE_WEIGHT, "adhesive-empty-above-full")
                .ifPresent(problems::add);
        atLeast(
                        known,
                        ClassFigure.ADHESIVE_WEIGHT_EMPTY,
                        ADHESIVE_LEAST,
                        ClassFigure.ADHESIVE_WEIGHT,
                        "adhesive-empty-low")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.TENDER_WEIGHT_EMPTY, ClassFigure.TENDER_WEIGHT_FULL, "tender-empty-above-full")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.COUPLED_AXLES, ClassFigure.AXLES, "coupled-above-axles")
                .ifPresent(problems::add);
        notAbove(known, ClassFigure.SUPERHEATER_SURFACE, ClassFigure.HEATING_SURFACE, "superheater-above-surface")
                .ifPresent(problems::add);
        atMost(known, ClassFigure.CYLINDER_STROKE, STROKE_OF_WHEEL, ClassFigure.DRIVING_WHEEL, "stroke-over-wheel")
                .ifPresent(problems::add);
        atMost(known, ClassFigure.GRATE_AREA, GRATE_OF_SURFACE, ClassFigure.HEATING_SURFACE, "grate-over-surface")
                .ifPresent(problems::add);
        return problems;
    }

    private static Optional<StockProblem> atLeast(
            KnownFigures known, ClassFigure bounded, double share, ClassFigure of, String code) {
        return known.si(bounded)
                .filter(value ->
                        known.si(of).filter(whole -> value < share * whole).isPresent())
                .map(value -> refused("figures." + bounded.key(), code));
    }

    private static Optional<StockProblem> atMost(
            KnownFigures known, ClassFigure bounded, double share, ClassFigure of, String code) {
        return known.si(bounded)
                .filter(value ->
                        known.si(of).filter(whole -> value > share * whole).isPresent())
                .map(value -> refused("figures." + bounded.key(), code));
    }

    private static Optional<StockProblem> notAbove(
            KnownFigures known, ClassFigure lesser, ClassFigure greater, String code) {
        return known.si(lesser)
                .filter(less -> known.si(greater).filter(more -> less > more).isPresent())
                .map(less -> refused("figures." + lesser.key(), code));
    }
}
