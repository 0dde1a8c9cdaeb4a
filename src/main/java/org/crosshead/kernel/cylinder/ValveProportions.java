package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.units.Check;

/**
 * A slide or piston valve and its ports at one end of a cylinder, as shares of the bore: a diagram depends on proportions only.
 *
 * @param lap steam lap: how far the valve overlaps the steam edge in mid position
 * @param lead opening to steam at the dead centre, the same at every cutoff as a radial gear gives it
 * @param exhaustLap overlap of the exhaust edge in mid position; negative where it is open there (exhaust clearance)
 * @param portLength length of the steam port across the valve's travel: opening times this is the area
 * @param portWidth greatest opening that counts, the width of the port
 */
public record ValveProportions(double lap, double lead, double exhaustLap, double portLength, double portWidth) {

    public ValveProportions {
        Check.within("lap", lap, 0.02, 0.15);
        Check.within("lead", lead, 0, 0.6 * lap);
        Check.within("exhaustLap", exhaustLap, -0.3 * lap, 0.3 * lap);
        Check.within("portLength", portLength, 0.3, 3);
        Check.within("portWidth", portWidth, 0.02, 0.3);
    }
}
