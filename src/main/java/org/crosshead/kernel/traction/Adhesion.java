package org.crosshead.kernel.traction;

import org.crosshead.kernel.units.Units;

/**
 * What the rail holds, as a share of the weight on the coupled wheels. Published figures scatter by a third; where two differ
 * the lower is taken.
 */
public final class Adhesion {

    private static final double DRY = 0.25;
    private static final double WET_SHARE = 0.6;
    private static final double GREASY = 1.0 / 12;
    private static final double LEAVES = 0.04;
    private static final double CURTIUS_KNIFFLER_A = 7.5;
    private static final double CURTIUS_KNIFFLER_B_KMH = 44;
    private static final double CURTIUS_KNIFFLER_C = 0.161;

    private Adhesion() {}

    /**
     * Returns the coefficient. Dry and wet: Koffman 1948, 0.25 and 0.6 of it (read in an abstract), falling with speed as Curtius
     * and Kniffler 1944 where theirs is lower (from memory). Damp: as wet, for a half-wet rail
     * holds no better than one washed clean (Bourne). Greasy: the lower of his
     * one tenth to one twelfth. Crushed leaves: 0.04, of 0.03 to 0.10 (from memory). Sanded: 0.25, the lower of 0.25 to 0.30 (from memory).
     *
     * @param speedMps 0 or more
     */
    public static double coefficient(RailState rail, double speedMps) {
        double falling = curtiusKniffler(speedMps);
        return switch (rail) {
            case DRY, SANDED -> Math.min(DRY, falling);
            case WET, DAMP -> WET_SHARE * Math.min(DRY, falling);
            case GREASY -> GREASY;
            case LEAVES -> LEAVES;
        };
    }

    /** Returns Curtius and Kniffler's coefficient for dry rail (from memory). */
    static double curtiusKniffler(double speedMps) {
        return CURTIUS_KNIFFLER_A / (Units.kmhFromMps(speedMps) + CURTIUS_KNIFFLER_B_KMH) + CURTIUS_KNIFFLER_C;
    }
}
