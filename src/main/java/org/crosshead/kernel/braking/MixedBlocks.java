package org.crosshead.kernel.braking;

/** Blocks of both kinds in one train, each within what its own wheels hold. */
public record MixedBlocks(CastIronBlocks iron, CompositionBlocks composition) implements Blocks {

    @Override
    public double forceN(double speedMps) {
        return iron.forceN(speedMps) + composition.forceN(speedMps);
    }

    @Override
    public MixedBlocks times(double multiple) {
        return new MixedBlocks(iron.times(multiple), composition.times(multiple));
    }

    @Override
    public MixedBlocks onRail(double multiple) {
        return new MixedBlocks(iron.onRail(multiple), composition.onRail(multiple));
    }
}
