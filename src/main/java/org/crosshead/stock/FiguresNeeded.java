package org.crosshead.stock;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.Need;
import org.crosshead.stock.figure.VehicleFigure;

/** Which figures a forecast can't do without. */
public final class FiguresNeeded {

    private static final Set<Need> NOT_FOR_FORECAST = EnumSet.of(Need.ROAD, Need.WHERE_KNOWN, Need.RECORD);
    private static final Set<BrakeKind> ENGINE_POWER_BRAKES =
            EnumSet.of(BrakeKind.VACUUM, BrakeKind.AIR, BrakeKind.STEAM);

    private FiguresNeeded() {}

    public static Collection<ClassFigure> ofClass(LocomotiveClassDraft content) {
        return Arrays.stream(ClassFigure.values())
                .filter(figure -> !NOT_FOR_FORECAST.contains(figure.need()))
                .filter(figure -> content.tenderEngine() || !figure.ofTender())
                .filter(figure -> hasPowerBrake(content) || figure.need() != Need.BRAKE)
                .toList();
    }

    /** A load that the formation states makes the kind's own needless. */
    static Collection<VehicleFigure> ofVehicle(VehicleKindDraft kind, FormationDraft.Item item) {
        return ofVehicle(kind).stream()
                .filter(figure -> figure != VehicleFigure.LOAD || item.loadTons() == null)
                .toList();
    }

    public static Collection<VehicleFigure> ofVehicle(VehicleKindDraft kind) {
        return Arrays.stream(VehicleFigure.values())
                .filter(figure -> !NOT_FOR_FORECAST.contains(figure.need()))
                .filter(figure -> TrainPipe.POWER_BRAKES.contains(kind.brake()) || figure.need() != Need.BRAKE)
                .toList();
    }

    static boolean hasPowerBrake(LocomotiveClassDraft content) {
        return ENGINE_POWER_BRAKES.contains(content.engineBrake());
    }
}
