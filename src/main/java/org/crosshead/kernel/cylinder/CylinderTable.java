package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * Mean effective pressure and steam of one class of engine, from indicator diagrams worked once at nodes of chest pressure, cutoff and
 * piston speed, and straight lines between them: continuous in all three, without allocation. Back pressure at each node is that
 * of the blast orifice at the steam the engine then uses.
 */
public final class CylinderTable {

    private static final Axis PRESSURES = new Axis(0.02, 0.02, 0.2, 0.45, 0.7, 1.0);
    private static final Axis CUTOFFS =
            new Axis(0.01, 0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.36, 0.43, 0.50, 0.57, 0.64, 0.72, 0.80, 0.90);
    private static final Axis FT_PER_MIN =
            new Axis(50, 0, 50, 150, 300, 450, 600, 750, 900, 1_050, 1_250, 1_500, 1_900, 2_400);
    /** Mean pressure and steam stand side by side. */
    private static final int PAIR = 2;

    private static final double BLAST_FLOW = 0.95;
    /** Density of the exhaust in the orifice: steam a little above the atmosphere. */
    private static final double EXHAUST_KG_PER_M3 = 0.62;

    private final double pressureMaxPa;
    private final double perPressureMax;
    private final double[] table;

    private CylinderTable(Bore bore, CylinderForm form, Superheat superheat, double pressureMaxPa) {
        this.pressureMaxPa = pressureMaxPa;
        perPressureMax = 1 / pressureMaxPa;
        table = new double[PAIR * PRESSURES.count() * CUTOFFS.count() * FT_PER_MIN.count()];
        for (int c = 0; c < CUTOFFS.count(); c++) {
            CrankSteps steps = new CrankSteps(ValveEvents.at(form.valve(), CUTOFFS.node(c)));
            for (int p = 0; p < PRESSURES.count(); p++) {
                fill(bore, form, superheat, new Line(p, c, steps));
            }
        }
    }

    /**
     * Size of the cylinders.
     *
     * @param boreM bore
     * @param strokeM stroke
     */
    public record Bore(double boreM, double strokeM) {

        public Bore {
            Check.positive("boreM", boreM);
            Check.positive("strokeM", strokeM);
        }
    }

    /** One line of nodes over speed. */
    private record Line(int pressure, int cutoff, CrankSteps steps) {}

    /**
     * Returns the table of a class.
     *
     * @param pressureMaxPa greatest chest pressure, above the atmosphere
     */
    public static CylinderTable of(Bore bore, CylinderForm form, Superheat superheat, double pressureMaxPa) {
        Check.within("pressureMaxPa", pressureMaxPa, 1e5, 24e5);
        return new CylinderTable(bore, form, superheat, pressureMaxPa);
    }

    /** Fills a line from rest to the greatest speed; the back pressure of a node follows from the steam of the one before. */
    private void fill(Bore bore, CylinderForm form, Superheat superheat, Line line) {
        double chestPa = PRESSURES.node(line.pressure()) * pressureMaxPa + SaturatedSteam.ATMOSPHERE_PA;
        double kgPerM3 = 0;
        for (int s = 0; s < FT_PER_MIN.count(); s++) {
            double pistonMps = Units.mpsFromFeetPerMinute(FT_PER_MIN.node(s));
            double backPa = Math.min(chestPa, SaturatedSteam.ATMOSPHERE_PA + blastPa(form, kgPerM3, pistonMps));
            Diagram diagram = IndicatorDiagram.of(
                    form,
                    line.steps(),
                    ends(superheat, chestPa, backPa),
                    new IndicatorDiagram.Pace(bore.strokeM() / bore.boreM(), pistonMps / bore.boreM()));
            int at = index(line.pressure(), line.cutoff(), s);
            kgPerM3 = diagram.steamKgPerM3();
            table[at] = diagram.meanPressurePa();
            table[at + 1] =
                    kgPerM3 * (1 + MissingQuantity.share(CUTOFFS.node(line.cutoff()), pistonMps, superheat.kelvins()));
        }
    }

    /** Returns steam from the chest and where it goes; pressures absolute. */
    static IndicatorDiagram.Ends ends(Superheat superheat, double chestPa, double backPa) {
        return new IndicatorDiagram.Ends(
                chestPa,
                1 / superheat.density(chestPa),
                superheat.kelvins() > 0 ? IndicatorDiagram.EXPONENT_SUPERHEATED : IndicatorDiagram.EXPONENT_SATURATED,
                backPa);
    }

    /** Returns the pressure before the blast orifice above that of the smokebox. A piston sweeps its area twice a stroke's time. */
    static double blastPa(CylinderForm form, double steamKgPerM3, double pistonMps) {
        double kgPerSAndM2 = steamKgPerM3 * pistonMps / (form.blastShare() * BLAST_FLOW);
        return kgPerSAndM2 * kgPerSAndM2 / (2 * EXHAUST_KG_PER_M3);
    }

    private static int index(int pressure, int cutoff, int speed) {
        return PAIR * ((pressure * CUTOFFS.count() + cutoff) * FT_PER_MIN.count() + speed);
    }

    /**
     * Returns the mean effective pressure.
     *
     * @param chestPa above the atmosphere, up to the greatest
     * @param cutoff from 0.05 to 0.9
     */
    public double meanPressurePa(double chestPa, double cutoff, double pistonMps) {
        return at(0, chestPa, cutoff, pistonMps);
    }

    /** Returns the steam used for each cubic metre that the pistons sweep, kg, condensed steam included. */
    public double steamKgPerM3(double chestPa, double cutoff, double pistonMps) {
        return at(1, chestPa, cutoff, pistonMps);
    }

    private double at(int which, double chestPa, double cutoff, double pistonMps) {
        double share = chestPa * perPressureMax;
        double ftPerMin = Units.feetPerMinuteFromMps(pistonMps);
        int p = PRESSURES.interval(share);
        int c = CUTOFFS.interval(cutoff);
        int s = FT_PER_MIN.interval(ftPerMin);
        double x = PRESSURES.along(p, share);
        double y = CUTOFFS.along(c, cutoff);
        double z = FT_PER_MIN.along(s, ftPerMin);
        return (1 - x) * plane(which + index(p, c, s), y, z) + x * plane(which + index(p + 1, c, s), y, z);
    }

    private double plane(int low, double y, double z) {
        int high = low + PAIR * FT_PER_MIN.count();
        return (1 - y) * ((1 - z) * table[low] + z * table[low + PAIR])
                + y * ((1 - z) * table[high] + z * table[high + PAIR]);
    }
}
