package org.crosshead.kernel.steam;

import com.hummeling.if97.IF97;
import org.crosshead.kernel.units.Check;

/**
 * Steam made hotter by a fixed number of kelvins than it boils at, over absolute pressure. With 0 it is dry saturated steam.
 *
 * <p>Source: IAPWS R7-97 (key IF97 in docs/sources.md), tabulated once at nodes 25 kPa apart.
 */
public final class Superheat {

    private static final double NODE_PA = 25e3;
    private static final double NODES_PER_PA = 1 / NODE_PA;
    private static final double PA_PER_MPA = 1e6;
    private static final double J_PER_KJ = 1e3;
    private static final double HOTTEST_K = 250;
    private static final double LEAST_K = 1;

    private final double kelvins;
    private final double[] enthalpy;
    private final double[] volumeShare;

    private Superheat(double kelvins) {
        this.kelvins = kelvins;
        SaturatedSteam saturated = SaturatedSteam.table();
        double range = SaturatedSteam.PRESSURE_GREATEST_PA - SaturatedSteam.PRESSURE_LEAST_PA;
        int count = (int) Math.round(range / NODE_PA) + 1;
        enthalpy = new double[count];
        volumeShare = new double[count];
        IF97 if97 = new IF97(IF97.UnitSystem.DEFAULT);
        for (int i = 0; i < count; i++) {
            double pressurePa = SaturatedSteam.PRESSURE_LEAST_PA + i * NODE_PA;
            double temperatureK = saturated.temperatureK(pressurePa) + kelvins;
            double pressureMpa = pressurePa / PA_PER_MPA;
            boolean dry = kelvins < LEAST_K;
            enthalpy[i] = dry
                    ? saturated.steamEnthalpy(pressurePa)
                    : J_PER_KJ * if97.specificEnthalpyPT(pressureMpa, temperatureK);
            volumeShare[i] =
                    dry ? 1 : if97.specificVolumePT(pressureMpa, temperatureK) / saturated.steamVolume(pressurePa);
        }
    }

    /**
     * Returns steam with this superheat.
     *
     * @param kelvins from 0 to 250; below 1 K it counts as none
     */
    public static Superheat of(double kelvins) {
        Check.within("kelvins", kelvins, 0, HOTTEST_K);
        return new Superheat(kelvins);
    }

    public double kelvins() {
        return kelvins;
    }

    /** Returns the enthalpy, J/kg. */
    public double enthalpy(double pressurePa) {
        return at(enthalpy, pressurePa);
    }

    /** Returns the density, kg/m3. */
    public double density(double pressurePa) {
        return 1 / (at(volumeShare, pressurePa) * SaturatedSteam.table().steamVolume(pressurePa));
    }

    private static double at(double[] values, double pressurePa) {
        double node = (pressurePa - SaturatedSteam.PRESSURE_LEAST_PA) * NODES_PER_PA;
        int low = Math.max(0, Math.min((int) node, values.length - 2));
        return values[low] + (node - low) * (values[low + 1] - values[low]);
    }
}
