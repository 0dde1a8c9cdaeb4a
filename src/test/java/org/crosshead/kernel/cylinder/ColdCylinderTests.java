package org.crosshead.kernel.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class ColdCylinderTests {

    private static final ColdCylinder CYLINDER = new ColdCylinder(0.5, 0.66);
    private static final double STEAM_PA = 1.2e6;
    private static final double COLD_K = 288;

    /** Temperature in a half space whose face is held at another from now on. */
    private static double halfSpaceK(double initialK, double faceK, double diffusivity, double depthM, double timeS) {
        return faceK + (initialK - faceK) * erf(depthM / (2 * Math.sqrt(diffusivity * timeS)));
    }

    /** The error function as the sum of its series. */
    private static double erf(double x) {
        double term = x;
        double sum = x;
        for (int n = 1; n < 200; n++) {
            term *= -x * x / n;
            sum += term / (2 * n + 1);
        }
        return 2 / Math.sqrt(Math.PI) * sum;
    }

    /** Key HALF-SPACE: 378 K, face at 303 K, diffusivity 9.547e-5, 0.05 m deep after 2 s: 377.2 K (read). */
    @Test
    void temperatureInAHalfSpaceIsAsPublished() {
        assertThat(halfSpaceK(378, 303, 9.547e-5, 0.05, 2)).isEqualTo(377.2, offset(0.05));
    }

    /** The heat in the wall, summed over its depth by the published law, is what the water gave. */
    @Test
    void waterGivesTheHeatThatTheWallHolds() {
        double timeS = 6;
        double diffusivity =
                ColdCylinder.CONDUCTIVITY_W_PER_M_K / (ColdCylinder.DENSITY_KG_PER_M3 * ColdCylinder.HEAT_J_PER_KG_K);
        // 188 C and 1,986 kJ/kg at 12 bar: steam tables, from memory.
        double steamK = 273.15 + 187.96;
        double heldJ = 0;
        double stepM = 1e-4;
        for (double depthM = stepM / 2; depthM < 0.04; depthM += stepM) {
            heldJ += ColdCylinder.DENSITY_KG_PER_M3
                    * ColdCylinder.HEAT_J_PER_KG_K
                    * (halfSpaceK(COLD_K, steamK, diffusivity, depthM, timeS) - COLD_K)
                    * stepM;
        }
        double wallsM2 = Math.PI * 0.5 * 0.66 + Math.PI * 0.5 * 0.5;
        assertThat(CYLINDER.condensedKg(STEAM_PA, COLD_K, timeS))
                .isCloseTo(heldJ * wallsM2 / 1_986e3, withinPercentage(0.5));
    }

    @Test
    void noMoreIsLeftThanWarmsTheWallThrough() {
        double whole = CYLINDER.condensedKg(STEAM_PA, COLD_K, 3_600);
        assertThat(CYLINDER.condensedKg(STEAM_PA, COLD_K, 36_000)).isEqualTo(whole);
        assertThat(CYLINDER.condensedKg(STEAM_PA, COLD_K, 6)).isLessThan(whole);
        assertThat(CYLINDER.condensedKg(STEAM_PA, COLD_K, 0)).isZero();
        assertThat(CYLINDER.condensedKg(STEAM_PA, 500, 6)).isZero();
    }

    @Test
    void clearanceHoldsItsShareOfTheStroke() {
        assertThat(CYLINDER.clearanceKg(0.1))
                .isCloseTo(0.1 * Math.PI / 4 * 0.25 * 0.66 * 1_000, withinPercentage(1e-9));
    }

    @Test
    void sizesThatCannotBeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ColdCylinder(0, 0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> new ColdCylinder(0.5, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> CYLINDER.condensedKg(STEAM_PA, COLD_K, -1));
    }
}
