package org.crosshead.stock.figure;

import java.util.Arrays;
import java.util.Optional;
import org.crosshead.kernel.units.Units;

/** A unit in which a source prints a figure. Tons are long tons; pressures are above the atmosphere; water is cold. */
public enum FigureUnit {
    COUNT("", 1),
    INCH("in", Units.metresFromInches(1)),
    FOOT("ft", Units.metresFromFeet(1)),
    MILLIMETRE("mm", 1 / 1000.0),
    METRE("m", 1),
    CHAIN("ch", Units.metresFromChains(1)),
    PSI("psi", Units.paFromPsi(1)),
    BAR("bar", Units.paFromBar(1)),
    INCH_OF_MERCURY("inHg", Units.paFromInHg(1)),
    KILOPASCAL("kPa", 1000),
    SQUARE_FOOT("sq ft", Units.m2FromSqFt(1)),
    SQUARE_METRE("m2", 1),
    PER_CENT("%", 1 / 100.0),
    TON("tons", Units.kgFromLongTons(1)),
    CWT("cwt", Units.kgFromCwt(1)),
    TONNE("t", Units.kgFromTonnes(1)),
    POUND("lb", Units.kgFromLb(1)),
    KILOGRAM("kg", 1),
    GALLON("gal", Units.kgFromGallons(1)),
    CUBIC_METRE("m3", 1000),
    TON_FORCE("tonf", Units.newtonsFromLongTonsForce(1)),
    POUND_FORCE("lbf", Units.newtonsFromLbf(1)),
    KILONEWTON("kN", 1000),
    MPH("mph", Units.mpsFromMph(1)),
    KMH("km/h", Units.mpsFromKmh(1)),
    BTU_PER_POUND("Btu/lb", Units.jPerKgFromBtuPerLb(1)),
    MEGAJOULE_PER_KILOGRAM("MJ/kg", 1e6),
    GALLONS_PER_HOUR("gal/h", Units.kgFromGallons(1) / 3600),
    LITRES_PER_HOUR("l/h", 1 / 3600.0),
    POUNDS_PER_HOUR("lb/h", Units.kgFromLb(1) / 3600),
    KILOGRAMS_PER_HOUR("kg/h", 1 / 3600.0),
    /** A difference of temperature. */
    DEGREES_FAHRENHEIT("degF", 5 / 9.0),
    /** A difference of temperature. */
    KELVIN("K", 1);

    private final String label;
    private final double siPerUnit;

    FigureUnit(String label, double siPerUnit) {
        this.label = label;
        this.siPerUnit = siPerUnit;
    }

    /** Returns the unit as stored and as shown; empty for a count. */
    public String label() {
        return label;
    }

    /** Returns the value in the kernel's unit: m, Pa, m2, kg, N, m/s, J/kg, kg/s, K, or a share. */
    public double toSi(double value) {
        return value * siPerUnit;
    }

    /** Returns the value in this unit. */
    public double fromSi(double si) {
        return si / siPerUnit;
    }

    /** Returns the unit of this label. */
    public static Optional<FigureUnit> labelled(String label) {
        return Arrays.stream(values()).filter(unit -> unit.label.equals(label)).findFirst();
    }
}
