package org.crosshead.stock.figure;

import static org.crosshead.stock.figure.FigureUnit.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.kernel.units.Units;

/** Every figure of a kind of vehicle. */
public enum VehicleFigure implements FigureSpec {
    TARE(Need.MASS, new Range(1, 150), TON, CWT, TONNE),
    /** Customary load; a formation may state another. 0 for none. */
    LOAD(Need.MASS, new Range(0, 150), TON, CWT, TONNE),
    /** Over buffers or couplings. */
    LENGTH(Need.LENGTH, new Range(6, 150), FOOT, METRE),
    AXLES(Need.ROAD, new Range(2, 16), COUNT),
    /** Sum of the forces of all blocks, full application. */
    BRAKE_BLOCK_FORCE(Need.BRAKE, new Range(0, 150), TON_FORCE, KILONEWTON, POUND_FORCE),
    /** Vacuum for which the force of the blocks is stated. */
    BRAKE_VACUUM(Need.WHERE_KNOWN, new Range(15, 27), INCH_OF_MERCURY, KILOPASCAL),
    /** Share of the blocks that are of composition, 0 for iron only. */
    COMPOSITION_BLOCKS(Need.WHERE_KNOWN, new Range(0, 100), PER_CENT),
    /** Sum of the forces of all blocks with the hand brake hard on. */
    HAND_BRAKE_FORCE(Need.WHERE_KNOWN, new Range(0, 60), TON_FORCE, KILONEWTON, POUND_FORCE),
    BRAKED_WEIGHT(Need.WHERE_KNOWN, new Range(0, 250), TONNE, TON),
    MAX_SPEED(Need.ROAD, new Range(5, 140), FigureUnit.MPH, KMH);

    private final Need need;
    // Immutable, but not so marked: a record of two numbers, and List.of.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Range range;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<FigureUnit> units;

    VehicleFigure(Need need, Range range, FigureUnit... units) {
        this.need = need;
        this.range = range;
        this.units = List.of(units);
    }

    @Override
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public List<FigureUnit> units() {
        return units;
    }

    @Override
    public Range range() {
        return range;
    }

    @Override
    public Need need() {
        return need;
    }

    @Override
    public Optional<EstimateRule> estimate() {
        return this == BRAKE_BLOCK_FORCE
                ? Optional.of(EstimateRule.share(
                        "70 per cent of the tare, the least of what is usual: from memory",
                        TARE,
                        0.70 * Units.GRAVITY_MPS2))
                : Optional.empty();
    }

    public static Optional<VehicleFigure> keyed(String key) {
        return Arrays.stream(values())
                .filter(figure -> figure.key().equals(key))
                .findFirst();
    }
}
