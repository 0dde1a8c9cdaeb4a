package org.crosshead.kernel.cylinder;

/** Closed forms of diagrams without wire-drawing, and the line that D. K. Clark drew through his trials: to compare with. */
final class IdealDiagram {

    private IdealDiagram() {}

    /** D. K. Clark's line {@code 13.5 sqrt(cutoff in per cent) - 28} per cent of gauge pressure (from memory), not below 0. */
    static double clark(double cutoff) {
        return Math.max(0, (13.5 * Math.sqrt(100 * cutoff) - 28) / 100);
    }

    /** Mean of the forward stroke as a share of the absolute pressure of admission, hyperbolic expansion. */
    static double forward(double cutoff, double clearance) {
        return cutoff + (cutoff + clearance) * Math.log((1 + clearance) / (cutoff + clearance));
    }

    /** Mean effective pressure as a share of gauge pressure, exhaust at the atmosphere from the dead centre on. */
    static double lossFree(double cutoff, double clearance, double gaugePerAbsolute) {
        return (forward(cutoff, clearance) - (1 - gaugePerAbsolute)) / gaugePerAbsolute;
    }
}
