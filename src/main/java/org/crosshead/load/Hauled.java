package org.crosshead.load;

import java.util.Collections;
import java.util.List;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationFigures.Vehicle;
import org.crosshead.stock.ResistanceRule;
import org.crosshead.stock.StockModel;

/** An engine and any number of vehicles of one kind. */
final class Hauled {

    private final EngineFigures.Resolved figures;
    private final Engine engine;
    private final Vehicle vehicle;

    Hauled(EngineFigures.Resolved figures, Engine engine, Vehicle vehicle) {
        this.figures = figures;
        this.engine = engine;
        this.vehicle = vehicle;
    }

    Engine engine() {
        return engine;
    }

    EngineFigures.Resolved figures() {
        return figures;
    }

    TrainBody body(int vehicles) {
        return StockModel.body(List.of(figures), load(vehicles), ResistanceRule.USUAL);
    }

    FormationFigures.Resolved load(int vehicles) {
        return new FormationFigures.Resolved(Collections.nCopies(vehicles, vehicle), List.of());
    }

    double tons(int vehicles) {
        return Units.longTonsFromKg(vehicles * vehicle.massKg());
    }
}
