package org.crosshead.kernel.motion;

import java.util.Arrays;
import java.util.List;
import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.EngineState;

/** Everything that changes on a run, so that an interval can be run again from where it began. */
final class TrainState {

    static final Handles SHUT = new Handles(new Controls(0, 0), false, Cause.STANDING);

    double positionM;
    double timeS;
    /** Speed squared: under constant force it changes evenly with distance. */
    double speedSquared;

    int cell;
    boolean standing = true;
    boolean braking;
    double brakeFromS;
    /** For how long the large ejector is still open. */
    double ejectorS;

    Handles handles = SHUT;
    double changedS;
    double stoodM;
    final EngineState[] boilers;
    final double[] tankWaterKg;
    final double[] tankUsedKg;
    final double[] coalBurntKg;
    final double[] steamKgPerS;
    final double[] auxiliaryKgPerS;
    final double[] blower;
    final double[] dampers;
    final Stoking.Task[] tasks;
    final double[] taskFromS;

    TrainState(List<EngineAtWork> engines, double startM) {
        int count = engines.size();
        positionM = startM;
        stoodM = startM;
        boilers = new EngineState[count];
        tankWaterKg = new double[count];
        tankUsedKg = new double[count];
        coalBurntKg = new double[count];
        steamKgPerS = new double[count];
        auxiliaryKgPerS = new double[count];
        blower = new double[count];
        dampers = new double[count];
        tasks = new Stoking.Task[count];
        taskFromS = new double[count];
        Arrays.fill(tasks, Stoking.Task.QUIET);
        for (int i = 0; i < count; i++) {
            Supply supply = engines.get(i).supply();
            boilers[i] = engines.get(i).start().carrying(supply.share(supply.tankWaterKg(), 0));
            tankWaterKg[i] = supply.tankWaterKg();
        }
    }

    TrainState(TrainState other) {
        positionM = other.positionM;
        timeS = other.timeS;
        speedSquared = other.speedSquared;
        cell = other.cell;
        standing = other.standing;
        braking = other.braking;
        brakeFromS = other.brakeFromS;
        ejectorS = other.ejectorS;
        handles = other.handles;
        changedS = other.changedS;
        stoodM = other.stoodM;
        boilers = other.boilers.clone();
        tankWaterKg = other.tankWaterKg.clone();
        tankUsedKg = other.tankUsedKg.clone();
        coalBurntKg = other.coalBurntKg.clone();
        steamKgPerS = other.steamKgPerS.clone();
        auxiliaryKgPerS = other.auxiliaryKgPerS.clone();
        blower = other.blower.clone();
        dampers = other.dampers.clone();
        tasks = other.tasks.clone();
        taskFromS = other.taskFromS.clone();
    }

    double speedMps() {
        return Math.sqrt(speedSquared);
    }
}
