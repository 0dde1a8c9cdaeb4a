package org.crosshead.stock;

import java.util.OptionalDouble;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.figure.ClassFigure;
import org.springframework.stereotype.Component;

/** The pressures to which boilers may be worked: the engine's own figure before its class's. */
@Component
public class WorkingPressures {

    private final Engines engines;
    private final LocomotiveClasses classes;

    WorkingPressures(Engines engines, LocomotiveClasses classes) {
        this.engines = engines;
        this.classes = classes;
    }

    /** Returns the working pressure above the atmosphere to a tenth of a pound; empty for an unknown engine or figure. */
    public OptionalDouble psiOf(String engineNumber) {
        return engines.current(engineNumber)
                .flatMap(engine -> classes.current(engine.content().classCode())
                        .flatMap(ofClass -> StockModel.known(ofClass, engine).si(ClassFigure.BOILER_PRESSURE)))
                // A pressure printed in psi must not come back as 224.99999999999997.
                .map(pa -> OptionalDouble.of(Math.rint(Units.psiFromPa(pa) * 10) / 10))
                .orElseGet(OptionalDouble::empty);
    }
}
