package org.crosshead.stock.figure;

import static org.crosshead.stock.figure.FigureUnit.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Every figure of a class of engines. An engine may have its own in place of its class's. */
public enum ClassFigure implements FigureSpec {
    CYLINDER_COUNT(Need.PULL, new Range(2, 4), COUNT),
    CYLINDER_BORE(Need.PULL, new Range(6, 40), INCH, MILLIMETRE),
    CYLINDER_STROKE(Need.PULL, new Range(8, 40), INCH, MILLIMETRE),
    /** Diameter on the tread. */
    DRIVING_WHEEL(Need.PULL, new Range(20, 100), INCH, FOOT, MILLIMETRE),
    /** Above the atmosphere. */
    BOILER_PRESSURE(Need.PULL, new Range(50, 315), PSI, BAR),
    /** Below which the class is not to be worked; above the atmosphere. */
    BOILER_PRESSURE_LEAST(Need.WHERE_KNOWN, new Range(20, 280), PSI, BAR),
    FULL_GEAR_CUTOFF(Need.PULL, new Range(40, 90), PER_CENT),
    LEAST_CUTOFF(Need.PULL, new Range(5, 75), PER_CENT),
    /** How far the valve overlaps the steam edge in mid position. */
    STEAM_LAP(Need.WHERE_KNOWN, new Range(0.3, 3), INCH, MILLIMETRE),
    /** Opening to steam at the dead centre. */
    VALVE_LEAD(Need.WHERE_KNOWN, new Range(0, 1), INCH, MILLIMETRE),
    /** In full gear. */
    VALVE_TRAVEL(Need.WHERE_KNOWN, new Range(1.5, 10), INCH, MILLIMETRE),
    PORT_WIDTH(Need.WHERE_KNOWN, new Range(0.3, 5), INCH, MILLIMETRE),
    /** Across the valve's motion; round a piston valve, bridges left out. */
    PORT_LENGTH(Need.WHERE_KNOWN, new Range(4, 60), INCH, MILLIMETRE),
    /** At one end, of the volume that the piston sweeps. */
    CYLINDER_CLEARANCE(Need.WHERE_KNOWN, new Range(2, 30), PER_CENT),
    /** Diameter; of a circle of equal area where it is not round. */
    BLAST_ORIFICE(Need.WHERE_KNOWN, new Range(1, 10), INCH, MILLIMETRE),
    GRATE_AREA(Need.STEAM, new Range(4, 120), SQUARE_FOOT, SQUARE_METRE),
    /** Tubes, flues and firebox, without the superheater. */
    HEATING_SURFACE(Need.STEAM, new Range(80, 7000), SQUARE_FOOT, SQUARE_METRE),
    /** 0 for none. */
    SUPERHEATER_SURFACE(Need.STEAM, new Range(0, 4000), SQUARE_FOOT, SQUARE_METRE),
    /** With the glass full. */
    BOILER_WATER_FULL(Need.STEAM, new Range(80, 13_000), GALLON, KILOGRAM, POUND),
    /** At the least level at which it may be worked. */
    BOILER_WATER_LEAST(Need.STEAM, new Range(50, 13_000), GALLON, KILOGRAM, POUND),
    COAL_CALORIFIC_VALUE(Need.STEAM, new Range(5_000, 15_800), BTU_PER_POUND, MEGAJOULE_PER_KILOGRAM),
    INJECTOR_DELIVERY(Need.WHERE_KNOWN, new Range(100, 10_000), GALLONS_PER_HOUR, LITRES_PER_HOUR),
    /** By which exhaust steam warms the feed while the engine steams; 0 for live-steam injectors only. */
    FEED_HEATING(Need.WHERE_KNOWN, new Range(0, 180), DEGREES_FAHRENHEIT, KELVIN),
    /** Steam that glands, valves and joints let out in the engine's condition. */
    LEAKAGE(Need.WHERE_KNOWN, new Range(0, 4_000), POUNDS_PER_HOUR, KILOGRAMS_PER_HOUR),
    /** On the coupled wheels, in working order. */
    ADHESIVE_WEIGHT(Need.ADHESION, new Range(3, 350), TON, TONNE),
    /** On the coupled wheels, tank and bunker of the engine itself empty. */
    ADHESIVE_WEIGHT_EMPTY(Need.WHERE_KNOWN, new Range(2, 350), TON, TONNE),
    /** In working order, without the tender. */
    ENGINE_WEIGHT(Need.MASS, new Range(4, 350), TON, TONNE),
    TENDER_WEIGHT_FULL(Need.MASS, new Range(3, 220), TON, TONNE),
    TENDER_WEIGHT_EMPTY(Need.RECORD, new Range(2, 150), TON, TONNE),
    COUPLED_AXLES(Need.ROAD, new Range(1, 8), COUNT),
    /** Of engine and tender. */
    AXLES(Need.ROAD, new Range(2, 24), COUNT),
    MAX_AXLE_LOAD(Need.ROAD, new Range(1, 40), TON, TONNE),
    /** Over buffers or couplings, engine and tender. */
    LENGTH(Need.LENGTH, new Range(12, 160), FOOT, METRE),
    TANK_CAPACITY(Need.WATER, new Range(50, 30_000), GALLON, CUBIC_METRE),
    COAL_CAPACITY(Need.COAL, new Range(0.2, 50), TON, CWT, TONNE),
    /** Over the crown sheet with the glass half full. */
    CROWN_WATER(Need.WHERE_KNOWN, new Range(0.5, 24), INCH, MILLIMETRE),
    /** Height from the least level at which it may be worked to the top of the glass. */
    GLASS_RANGE(Need.WHERE_KNOWN, new Range(2, 24), INCH, MILLIMETRE),
    /** From the middle of the boiler's water to the end of the crown sheet furthest from it. */
    CROWN_DISTANCE(Need.WHERE_KNOWN, new Range(2, 30), FOOT, METRE),
    /** Sum of the forces of all blocks on the engine's wheels, full application. */
    ENGINE_BRAKE_FORCE(Need.BRAKE, new Range(0, 300), TON_FORCE, KILONEWTON, POUND_FORCE),
    TENDER_BRAKE_FORCE(Need.BRAKE, new Range(0, 200), TON_FORCE, KILONEWTON, POUND_FORCE),
    /** That it makes in the train pipe with the brake released. */
    TRAIN_VACUUM(Need.WHERE_KNOWN, new Range(15, 27), INCH_OF_MERCURY, KILOPASCAL),
    /** Of engine and tender, as painted. */
    BRAKED_WEIGHT(Need.WHERE_KNOWN, new Range(0, 400), TONNE, TON),
    MAX_SPEED(Need.SPEED, new Range(5, 140), FigureUnit.MPH, KMH),
    /** Least radius. */
    MIN_CURVE(Need.ROAD, new Range(1, 40), CHAIN, METRE);

    private final Need need;
    // Immutable, but not so marked: a record of two numbers, and List.of.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Range range;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<FigureUnit> units;

    ClassFigure(Need need, Range range, FigureUnit... units) {
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

    /** Returns whether it belongs to a tender, so that a tank engine has none. */
    public boolean ofTender() {
        return this == TENDER_WEIGHT_FULL || this == TENDER_WEIGHT_EMPTY || this == TENDER_BRAKE_FORCE;
    }

    @Override
    public Optional<EstimateRule> estimate() {
        return ClassEstimates.of(this);
    }

    public static Optional<ClassFigure> keyed(String key) {
        return Arrays.stream(values())
                .filter(figure -> figure.key().equals(key))
                .findFirst();
    }
}
