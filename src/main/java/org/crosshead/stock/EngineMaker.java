package org.crosshead.stock;

import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.LocomotiveParameters;

/** Builds an engine that can be worked out from its figures. */
@FunctionalInterface
public interface EngineMaker {

    Engine of(LocomotiveParameters parameters);
}
