package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.units.Check;

/**
 * Water that steam leaves in a cylinder whose walls are cold. The wall, a thick body whose face is held at the temperature of the
 * steam from now on, takes in {@code 2 k dT sqrt(t / (pi a))} for each square metre (conduction into a half space, Fourier's law;
 * key HALF-SPACE in docs/sources.md), and never more than warms it through; every kilogram condensed gives it the latent heat.
 * As the face is not under live steam all the time this is the most that can be.
 *
 * <p>Wall, covers and piston as thick as 1/18 of the bore, and properties of grey cast iron, are estimates of this project.
 *
 * @param boreM from 0.1 to 1.2
 * @param strokeM from 0.1 to 1.2
 */
public record ColdCylinder(double boreM, double strokeM) {

    static final double CONDUCTIVITY_W_PER_M_K = 50;
    static final double DENSITY_KG_PER_M3 = 7_200;
    static final double HEAT_J_PER_KG_K = 500;

    private static final double THICKNESS_OF_BORE = 1.0 / 18;
    private static final double WATER_KG_PER_M3 = 1_000;
    private static final double GREATEST_M = 1.2;

    public ColdCylinder {
        Check.within("boreM", boreM, 0.1, GREATEST_M);
        Check.within("strokeM", strokeM, 0.1, GREATEST_M);
    }

    /**
     * Returns the water left in the cylinder, both ends together, kg.
     *
     * @param pressurePa of the steam, absolute
     * @param coldK temperature of the walls before
     * @param durationS since steam came
     */
    public double condensedKg(double pressurePa, double coldK, double durationS) {
        Check.notNegative("durationS", durationS);
        double risesK = Math.max(0, SaturatedSteam.table().temperatureK(pressurePa) - coldK);
        double diffusivity = CONDUCTIVITY_W_PER_M_K / (DENSITY_KG_PER_M3 * HEAT_J_PER_KG_K);
        double takenJ = 2 * CONDUCTIVITY_W_PER_M_K * risesK * Math.sqrt(durationS / (Math.PI * diffusivity));
        double wholeJ = THICKNESS_OF_BORE * boreM * DENSITY_KG_PER_M3 * HEAT_J_PER_KG_K * risesK;
        return wallsM2() * Math.min(takenJ, wholeJ) / latentJPerKg(pressurePa);
    }

    /**
     * Returns the water that fills the clearance at one end, kg.
     *
     * @param clearance as in {@link CylinderForm}
     */
    public double clearanceKg(double clearance) {
        return clearance * pistonM2() * strokeM * WATER_KG_PER_M3;
    }

    /** Barrel, both covers and both faces of the piston. */
    private double wallsM2() {
        return Math.PI * boreM * strokeM + 4 * pistonM2();
    }

    private double pistonM2() {
        return Math.PI / 4 * boreM * boreM;
    }

    private static double latentJPerKg(double pressurePa) {
        SaturatedSteam table = SaturatedSteam.table();
        double waterJPerKg = table.waterEnergy(pressurePa) + pressurePa * table.waterVolume(pressurePa);
        return table.steamEnthalpy(pressurePa) - waterJPerKg;
    }
}
