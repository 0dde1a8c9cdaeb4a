package org.crosshead.stock;

import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.LocomotiveParameters;

/** Builds an engine that can be worked out from its figures: the one place that says which form of engine is used. */
@FunctionalInterface
public interface EngineMaker {

    Engine of(LocomotiveParameters parameters);
}
