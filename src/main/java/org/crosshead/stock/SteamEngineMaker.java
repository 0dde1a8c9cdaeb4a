package org.crosshead.stock;

import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.SteamEngine;
import org.springframework.stereotype.Component;

/** Builds simple-expansion engines. */
@Component
final class SteamEngineMaker implements EngineMaker {

    @Override
    public Engine of(LocomotiveParameters parameters) {
        return SteamEngine.of(parameters);
    }
}
