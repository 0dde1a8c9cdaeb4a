package org.crosshead.kernel.braking;

import java.util.List;

/** Several brakes that act together, each within what its own wheels hold. Without parts it has no force. */
public record CombinedBrake(List<BrakeForce> parts) implements BrakeForce {

    public CombinedBrake {
        parts = List.copyOf(parts);
    }

    public static CombinedBrake of(BrakeForce... parts) {
        return new CombinedBrake(List.of(parts));
    }

    @Override
    public double forceN(double speedMps) {
        double sumN = 0;
        for (BrakeForce part : parts) {
            sumN += part.forceN(speedMps);
        }
        return sumN;
    }
}
