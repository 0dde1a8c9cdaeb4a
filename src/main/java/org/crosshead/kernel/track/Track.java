package org.crosshead.kernel.track;

/** The rails of a path in metres from its start, in the direction of running. */
public record Track(GradientProfile gradients, Curves curves, SpeedLimits limits) {

    public double startM() {
        return gradients.startM();
    }

    public double endM() {
        return gradients.endM();
    }
}
