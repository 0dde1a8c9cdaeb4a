package org.crosshead.stock;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How far the train pipe reaches from the front: vehicles of its own kind and piped ones pass it on, all others end it. */
final class TrainPipe {

    static final Set<BrakeKind> POWER_BRAKES = EnumSet.of(BrakeKind.VACUUM, BrakeKind.AIR);

    private TrainPipe() {}

    /** Returns the kind of the first vehicle with a power brake, or NONE. */
    static BrakeKind kindOf(List<BrakeKind> vehicles) {
        return vehicles.stream().filter(POWER_BRAKES::contains).findFirst().orElse(BrakeKind.NONE);
    }

    /** Returns how many vehicles, from the front, a pipe of this kind reaches. */
    static int reach(List<BrakeKind> vehicles, BrakeKind pipe) {
        if (!POWER_BRAKES.contains(pipe)) {
            return 0;
        }
        int reach = 0;
        while (reach < vehicles.size() && passesOn(vehicles.get(reach), pipe)) {
            reach++;
        }
        return reach;
    }

    /** Returns what an inspector should know of brakes that do not work together; nothing is refused for it. */
    static List<StockProblem> warnings(List<BrakeKind> vehicles) {
        List<StockProblem> warnings = new ArrayList<>();
        if (vehicles.containsAll(POWER_BRAKES)) {
            warnings.add(StockProblem.warning("items", "mixed-brakes"));
        }
        int reach = reach(vehicles, kindOf(vehicles));
        long cutOff =
                vehicles.stream().skip(reach).filter(POWER_BRAKES::contains).count();
        if (cutOff > 0) {
            warnings.add(StockProblem.warning("items", "pipe-ends", reach, cutOff));
        }
        return warnings;
    }

    private static boolean passesOn(BrakeKind vehicle, BrakeKind pipe) {
        return vehicle == pipe || vehicle == BrakeKind.PIPED;
    }
}
