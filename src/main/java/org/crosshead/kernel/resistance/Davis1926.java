package org.crosshead.kernel.resistance;

import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * W. J. Davis's resistance of one vehicle: {@code R = 1.3 + 29/w + b V + C A V^2/(w n)} pounds per short ton, V in miles an hour,
 * w short tons on each axle, n axles, A frontal area in square feet.
 *
 * <p>Source: form with the freight coefficients b 0.045 and C 0.0005 read in quotations, [DAVIS-1926]; A 85 is the area given
 * beside them there. The coach and leading-locomotive coefficients are from memory. The formula is
 * meant for axles of more than 5 short tons (from memory); below that it lies above the later variant for light axles. Side wind
 * and track worse than a main line are left out.
 */
public final class Davis1926 {

    /** Freight vehicle: b and C read, [DAVIS-1926]. */
    public static final Coefficients FREIGHT = new Coefficients(0.045, 0.0005, 85);

    /** Passenger coach behind others: from memory. */
    public static final Coefficients COACH = new Coefficients(0.03, 0.00034, 120);

    /** Leading locomotive: from memory, the larger of the areas remembered. */
    public static final Coefficients LEADING_LOCOMOTIVE = new Coefficients(0.03, 0.0024, 120);

    private static final double JOURNAL_LB_PER_SHORT_TON = 1.3;
    private static final double AXLE_LB = 29;

    private Davis1926() {}

    /**
     * Flange and air coefficients as printed.
     *
     * @param b pounds per short ton and mile an hour
     * @param c pounds per square foot and (mile an hour)2
     * @param areaSqFt frontal area
     */
    public record Coefficients(double b, double c, double areaSqFt) {

        /** Returns the air term for one vehicle, N per (m/s)2. */
        double airNPerMps2() {
            return ShortTon.newtonsPerMps2(c * areaSqFt);
        }
    }

    /** Returns pounds per short ton as the formula prints it, for checks against tables. */
    static double lbPerShortTon(Coefficients set, Vehicle vehicle, double speedMps) {
        double force = vehicle(set, vehicle).forceN(speedMps);
        return Units.lbfFromNewtons(force) / ShortTon.fromKg(vehicle.massKg());
    }

    /** Returns the resistance of one vehicle; its starting force is the formula's at rest and no more. */
    public static RunningResistance vehicle(Coefficients set, Vehicle vehicle) {
        double shortTons = ShortTon.fromKg(vehicle.massKg());
        double atRestN = Units.newtonsFromLbf(JOURNAL_LB_PER_SHORT_TON * shortTons + AXLE_LB * vehicle.axles());
        return new RunningResistance(atRestN, ShortTon.newtonsPerMps(set.b() * shortTons), set.airNPerMps2(), atRestN);
    }

    /** A vehicle with its load. */
    public record Vehicle(double massKg, int axles) {

        public Vehicle {
            Check.within("massKg", massKg, 500, 500_000);
            Check.within("axles", axles, 1, 40);
        }
    }
}
