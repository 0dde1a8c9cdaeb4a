package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.units.Check;

/**
 * All of a cylinder that its diagram depends on, size apart.
 *
 * @param clearance volume at the dead centre, ports included, as a share of the stroke volume
 * @param flowShare share of an opening's area that counts as flow: vena contracta, bends, edges
 * @param blastShare area of the blast orifice as a share of that of all pistons
 */
public record CylinderForm(ValveProportions valve, double clearance, double flowShare, double blastShare) {

    /**
     * Short-travel slide valves: lap 1 in and lead 9/32 in on a bore of 17 in, ports as long as the bore, four and a half inches of
     * travel in full gear. Examples of common practice, with clearance and flow share chosen so that Clark's table of mean
     * pressures (key VOS) is met as far as docs/validation.md says.
     */
    public static final CylinderForm SHORT_TRAVEL =
            new CylinderForm(new ValveProportions(1.0 / 17, 0.28 / 17, 0, 17.0 / 17, 1.5 / 17), 0.07, 0.95, 0.05);

    /**
     * Long-travel piston valves: lap 1 3/4 in and lead 3/16 in on a bore of 18 1/2 in, ports round the valve, seven and three
     * eighths inches of travel in full gear. Examples of common practice, with clearance and flow share chosen for about half of chest
     * pressure at a quarter cutoff and 15 to 20 mph (from memory).
     */
    public static final CylinderForm LONG_TRAVEL = new CylinderForm(
            new ValveProportions(1.75 / 18.5, 0.1875 / 18.5, 0, 30 / 18.5, 2.25 / 18.5), 0.12, 0.95, 0.05);

    public CylinderForm {
        Check.within("clearance", clearance, 0.02, 0.30);
        Check.within("flowShare", flowShare, 0.1, 1);
        Check.within("blastShare", blastShare, 0.005, 0.3);
    }
}
