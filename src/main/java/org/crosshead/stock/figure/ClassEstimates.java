package org.crosshead.stock.figure;

import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.units.Units;

/** Rules by which unknown figures of a class may be estimated. Where a range is usual, its safer end is taken. */
final class ClassEstimates {

    /** Water to the top of the glass for each square metre of heating surface: from memory, about 30 kg. */
    private static final double WATER_KG_PER_M2 = 30;

    private static final double CROWN_M_PER_ROOT_M2 = 0.26;

    private static final Map<ClassFigure, EstimateRule> RULES = Map.ofEntries(
            Map.entry(
                    ClassFigure.FULL_GEAR_CUTOFF,
                    EstimateRule.fixed("75 per cent in full gear: common practice", FigureUnit.PER_CENT, 75)),
            Map.entry(
                    ClassFigure.LEAST_CUTOFF,
                    EstimateRule.fixed("not worked below 25 per cent: common practice", FigureUnit.PER_CENT, 25)),
            Map.entry(
                    ClassFigure.BOILER_WATER_FULL,
                    EstimateRule.share(
                            "30 kg of water for each square metre of heating surface: from memory",
                            ClassFigure.HEATING_SURFACE,
                            WATER_KG_PER_M2)),
            Map.entry(
                    ClassFigure.BOILER_WATER_LEAST,
                    EstimateRule.share(
                            "85 per cent of the water with the glass full: from memory",
                            ClassFigure.BOILER_WATER_FULL,
                            0.85)),
            Map.entry(
                    ClassFigure.COAL_CALORIFIC_VALUE,
                    EstimateRule.fixed(
                            "12,000 Btu/lb, a middling steam coal: tables print 10,300 to 15,200",
                            FigureUnit.BTU_PER_POUND,
                            12_000)),
            Map.entry(
                    ClassFigure.INJECTOR_DELIVERY,
                    EstimateRule.fixed(
                            "2,000 gal/h, the least of what one injector of usual size delivers: from memory",
                            FigureUnit.GALLONS_PER_HOUR,
                            2_000)),
            Map.entry(
                    ClassFigure.ENGINE_BRAKE_FORCE,
                    EstimateRule.share(
                            "40 per cent of the engine's weight, the least of what is usual: from memory",
                            ClassFigure.ENGINE_WEIGHT,
                            0.40 * Units.GRAVITY_MPS2)),
            Map.entry(
                    ClassFigure.TENDER_BRAKE_FORCE,
                    EstimateRule.share(
                            "50 per cent of the empty tender's weight, the least of what is usual: from memory",
                            ClassFigure.TENDER_WEIGHT_EMPTY,
                            0.50 * Units.GRAVITY_MPS2)),
            Map.entry(
                    ClassFigure.TENDER_WEIGHT_EMPTY,
                    new EstimateRule("the full tender less its water and coal", ClassEstimates::emptyTenderKg)),
            Map.entry(
                    ClassFigure.MAX_AXLE_LOAD,
                    new EstimateRule("the weight on the coupled wheels shared evenly", ClassEstimates::axleLoadKg)),
            Map.entry(
                    ClassFigure.GLASS_RANGE,
                    EstimateRule.fixed(
                            "8 inches from the least level to the top of the glass: from memory", FigureUnit.INCH, 8)),
            Map.entry(
                    ClassFigure.CROWN_DISTANCE,
                    new EstimateRule(
                            "0.26 m for the root of each square metre of heating surface, half the length of a usual boiler: from memory",
                            ClassEstimates::crownDistanceM)));

    private ClassEstimates() {}

    static Optional<EstimateRule> of(ClassFigure figure) {
        return Optional.ofNullable(RULES.get(figure));
    }

    private static Optional<Double> emptyTenderKg(KnownFigures known) {
        return known.si(ClassFigure.TENDER_WEIGHT_FULL)
                .flatMap(full -> known.si(ClassFigure.TANK_CAPACITY)
                        .flatMap(water -> known.si(ClassFigure.COAL_CAPACITY).map(coal -> full - water - coal)))
                .filter(empty -> empty > 0);
    }

    private static Optional<Double> crownDistanceM(KnownFigures known) {
        return known.si(ClassFigure.HEATING_SURFACE).map(surface -> CROWN_M_PER_ROOT_M2 * Math.sqrt(surface));
    }

    private static Optional<Double> axleLoadKg(KnownFigures known) {
        return known.si(ClassFigure.ADHESIVE_WEIGHT)
                .flatMap(weight -> known.si(ClassFigure.COUPLED_AXLES).map(axles -> weight / axles));
    }
}
