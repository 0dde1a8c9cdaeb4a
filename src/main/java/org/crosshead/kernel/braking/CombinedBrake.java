package org.crosshead.kernel.braking;

import java.util.List;

/** Several sets of blocks that act together, each within what its own wheels hold. Without parts it has no force. */
public record CombinedBrake(List<Blocks> parts) implements Blocks {

    public CombinedBrake {
        parts = List.copyOf(parts);
    }

    public static CombinedBrake of(Blocks... parts) {
        return new CombinedBrake(List.of(parts));
    }

    @Override
    public double forceN(double speedMps) {
        double sumN = 0;
        for (Blocks part : parts) {
            sumN += part.forceN(speedMps);
        }
        return sumN;
    }

    @Override
    public CombinedBrake times(double multiple) {
        return new CombinedBrake(
                parts.stream().map(part -> part.times(multiple)).toList());
    }

    @Override
    public CombinedBrake onRail(double multiple) {
        return new CombinedBrake(
                parts.stream().map(part -> part.onRail(multiple)).toList());
    }
}
