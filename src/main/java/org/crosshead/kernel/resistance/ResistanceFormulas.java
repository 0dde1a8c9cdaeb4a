package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;

/**
 * The formula this project uses for each family of vehicle.
 *
 * <p>Coaches, wagons and tenders: {@link Davis1926} with its freight coefficients, the ones that were read. For coaches that lies
 * above the coach coefficients, known from memory only, at every speed and mass. Wagons: the part without speed is that of
 * {@link Shurtleff} where it is greater, as it is for four wheels. Locomotives: {@link ArmyTr0603}, 20 pounds per
 * short ton for machine and axles, plus the air term of Davis's leading locomotive (from memory). Standing: the greater of that
 * formula at rest and {@link StartingResistance}. So the load is judged on the low side; for stops, where the
 * low side of resistance is the safe one, callers count on half of it only.
 */
public final class ResistanceFormulas {

    private static final double LOCOMOTIVE_AXLE_KG = 15_000;
    private static final double AXLE_GREATEST_KG = 22_500;

    private ResistanceFormulas() {}

    /**
     * Returns the resistance of one vehicle on straight level track.
     *
     * @param massKg with its load or, for engine and tender, fuel and water
     * @param axles of the vehicle; without effect for a locomotive
     */
    public static RunningResistance of(ResistanceFamily family, double massKg, int axles) {
        Davis1926.Vehicle vehicle = new Davis1926.Vehicle(massKg, axles);
        RunningResistance running = switch (family) {
            case LOCOMOTIVE -> locomotive(massKg);
            case BOGIE_WAGON, FOUR_WHEEL_WAGON -> wagon(vehicle);
            case BOGIE_COACH, FOUR_WHEEL_COACH, TENDER -> Davis1926.vehicle(Davis1926.FREIGHT, vehicle);
        };
        return with(running, running.constantN(), Math.max(running.constantN(), StartingResistance.ofN(massKg)));
    }

    /**
     * Returns how many axles a vehicle of this mass commonly has: an estimate from memory, on the high side, as more axles resist
     * more.
     */
    public static int usualAxles(ResistanceFamily family, double massKg) {
        Check.within("massKg", massKg, 500, 500_000);
        int usual = switch (family) {
            case BOGIE_COACH -> massKg > 42_000 ? 6 : 4;
            case FOUR_WHEEL_COACH -> massKg > 16_000 ? 3 : 2;
            case BOGIE_WAGON -> 4;
            case FOUR_WHEEL_WAGON -> 2;
            case TENDER -> massKg > 55_000 ? 4 : 3;
            case LOCOMOTIVE -> Math.max(2, (int) Math.ceil(massKg / LOCOMOTIVE_AXLE_KG));
        };
        return Math.max(usual, (int) Math.ceil(massKg / AXLE_GREATEST_KG));
    }

    private static RunningResistance locomotive(double massKg) {
        double constantN = ArmyTr0603.locomotivePerMassN() * massKg;
        return new RunningResistance(constantN, 0, Davis1926.LEADING_LOCOMOTIVE.airNPerMps2(), constantN);
    }

    private static RunningResistance wagon(Davis1926.Vehicle vehicle) {
        RunningResistance davis = Davis1926.vehicle(Davis1926.FREIGHT, vehicle);
        double shurtleffN = Shurtleff.perMassN(vehicle.massKg()) * vehicle.massKg();
        double constantN = Math.max(davis.constantN(), shurtleffN);
        return with(davis, constantN, constantN);
    }

    private static RunningResistance with(RunningResistance running, double constantN, double startingN) {
        return new RunningResistance(constantN, running.linearNPerMps(), running.quadraticNPerMps2(), startingN);
    }
}
