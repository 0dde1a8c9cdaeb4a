package org.crosshead.stock;

import java.util.LinkedHashMap;
import java.util.Map;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.SteamEngine;
import org.springframework.stereotype.Component;

/** Builds simple-expansion engines. Their diagrams take some 35 ms to work out, so the engines asked for last are kept. */
@Component
final class SteamEngineMaker implements EngineMaker {

    private static final int KEPT = 32;

    private final Map<LocomotiveParameters, Engine> engines = new LinkedHashMap<>(16, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<LocomotiveParameters, Engine> eldest) {
            return size() > KEPT;
        }
    };

    @Override
    public synchronized Engine of(LocomotiveParameters parameters) {
        return engines.computeIfAbsent(parameters, SteamEngine::of);
    }
}
