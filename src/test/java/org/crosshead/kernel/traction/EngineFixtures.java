package org.crosshead.kernel.traction;

import java.util.OptionalDouble;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;
import org.crosshead.kernel.units.Units;

/** Invented engines for tests. */
public final class EngineFixtures {

    private EngineFixtures() {}

    /** A two-cylinder express engine with long-travel valves and superheater, 225 psi, 80 tons on six coupled wheels' 60. */
    public static LocomotiveParameters express() {
        return new LocomotiveParameters(
                new Cylinders(2, Units.metresFromInches(19), Units.metresFromInches(28), Units.metresFromInches(74)),
                new ValveGear(ValveFamily.LONG_TRAVEL, 0.75, 0.2),
                boiler(225, 29, 1_700, 350),
                Units.kgFromLongTons(57),
                Units.mpsFromMph(80));
    }

    /** A saturated tank engine with short-travel valves, 165 psi. */
    public static LocomotiveParameters tank() {
        return new LocomotiveParameters(
                new Cylinders(2, Units.metresFromInches(17.5), Units.metresFromInches(26), Units.metresFromInches(55)),
                new ValveGear(ValveFamily.SHORT_TRAVEL, 0.75, 0.25),
                boiler(165, 18, 1_000, 0),
                Units.kgFromLongTons(46),
                Units.mpsFromMph(50));
    }

    private static Boiler boiler(double psi, double grateSqFt, double surfaceSqFt, double superheaterSqFt) {
        return new Boiler(
                Units.paFromPsi(psi),
                Units.m2FromSqFt(grateSqFt),
                Units.m2FromSqFt(surfaceSqFt),
                Units.m2FromSqFt(superheaterSqFt),
                3.2 * surfaceSqFt,
                2.3 * surfaceSqFt,
                Units.jPerKgFromBtuPerLb(13_500),
                OptionalDouble.empty());
    }

    /** Returns a boiler at working pressure, three quarters of a glass, with a fire that under full blast makes a share of its greatest steam. */
    public static EngineState ready(Engine engine, double share) {
        Boiler boiler = engine.parameters().boiler();
        return new EngineState(
                boiler.pressureMaxPa(),
                boiler.waterLeastKg() + 0.75 * (boiler.waterFullKg() - boiler.waterLeastKg()),
                share * engine.furnace().fullKg());
    }
}
