package org.crosshead.kernel.cylinder;

import org.crosshead.kernel.units.Check;

/**
 * Motion and events of a valve that moves harmonically, as a radial gear drives it: one part in step with the piston that gives lap
 * and lead, one a quarter turn ahead of it that the gear makes longer or shorter. Both ends of the cylinder are taken as their
 * mean, so that the rod counts as infinitely long. Angles are those of the crank from the dead centre at which the stroke begins.
 *
 * <p>Lengths are shares of the bore, areas shares of its square. Source: the geometry of harmonic valve motion; no figure is taken from print. Left out: angularity of the rods, slip of the
 * die, play.
 */
public final class ValveEvents {

    private final ValveProportions valve;
    private final double cutoff;
    /** Amplitude of the part in step with the piston, and of the part a quarter turn ahead. */
    private final double inStep;

    private final double ahead;

    private ValveEvents(ValveProportions valve, double cutoff, double ahead) {
        this.valve = valve;
        this.cutoff = cutoff;
        this.inStep = valve.lap() + valve.lead();
        this.ahead = ahead;
    }

    /**
     * Returns the motion that cuts steam off at this share of the stroke.
     *
     * @param cutoff from 0.05 to 0.9
     */
    public static ValveEvents at(ValveProportions valve, double cutoff) {
        Check.within("cutoff", cutoff, 0.05, 0.9);
        double cosine = 1 - 2 * cutoff;
        double sine = Math.sqrt(1 - cosine * cosine);
        double inStep = valve.lap() + valve.lead();
        return new ValveEvents(valve, cutoff, (valve.lap() - inStep * cosine) / sine);
    }

    public double cutoff() {
        return cutoff;
    }

    /** Returns how far the valve travels from end to end. */
    public double travel() {
        return 2 * Math.sqrt(inStep * inStep + ahead * ahead);
    }

    /** Returns how far the valve is from its mid position, towards opening this end to steam. */
    public double displacement(double cosine, double sine) {
        return inStep * cosine + ahead * sine;
    }

    /** Returns the area open to steam at a displacement. */
    public double steamArea(double displacement) {
        double opening = Math.min(valve.portWidth(), displacement - valve.lap());
        return opening <= 0 ? 0 : opening * valve.portLength();
    }

    /** Returns the area open to the exhaust at a displacement. */
    public double exhaustArea(double displacement) {
        double opening = Math.min(valve.portWidth(), -displacement - valve.exhaustLap());
        return opening <= 0 ? 0 : opening * valve.portLength();
    }

    /** Returns at what share of the stroke the exhaust opens. */
    public double release() {
        return share(turn() + Math.acos(-2 * valve.exhaustLap() / travel()));
    }

    /** Returns what share of the back stroke is left when the exhaust closes. */
    public double compression() {
        return share(turn() - Math.acos(-2 * valve.exhaustLap() / travel()));
    }

    /** Returns what share of the back stroke is left when steam is let in before the dead centre. */
    public double admission() {
        return share(turn() - Math.acos(2 * valve.lap() / travel()));
    }

    /** Returns the greatest opening to steam, the port's width at most. */
    public double openingMost() {
        return Math.min(valve.portWidth(), travel() / 2 - valve.lap());
    }

    /** Returns the crank's angles, from 0 to a turn, at which steam is cut off and let in, and the exhaust opens and closes. */
    double[] angles() {
        double steam = Math.acos(2 * valve.lap() / travel());
        double exhaust = Math.acos(-2 * valve.exhaustLap() / travel());
        double whole = 2 * Math.PI;
        return new double[] {
            turn() + steam, (turn() - steam + whole) % whole, turn() + exhaust, (turn() - exhaust + whole) % whole
        };
    }

    private double turn() {
        return Math.atan2(ahead, inStep);
    }

    private static double share(double angle) {
        return (1 - Math.cos(angle)) / 2;
    }
}
