package org.crosshead.kernel.scatter;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.resistance.RunningResistance;
import org.crosshead.kernel.resistance.TrainBody;

/** The train of a request as it is on one day. */
final class ScatteredTrain {

    private ScatteredTrain() {}

    static RunRequest on(RunRequest request, Day day) {
        RunRequest loaded = request.withTrailing(day.load());
        MakeUp train = loaded.train();
        TrainBody body = train.body();
        RunningResistance resistance = windy(body.resistance().times(day.resistance()), day.windMps());
        List<EngineAtWork> engines = new ArrayList<>();
        for (EngineAtWork atWork : train.engines()) {
            engines.add(new EngineAtWork(
                    new ScatteredEngine(atWork.engine(), day.coalHeat(), day.adhesion()),
                    atWork.start(),
                    atWork.supply(),
                    atWork.assistance()));
        }
        MakeUp other = new MakeUp(
                new TrainBody(body.massKg(), body.rotatingShare(), body.lengthM(), resistance),
                train.trailing(),
                engines,
                train.service(),
                train.ejector(),
                train.helpN());
        return new RunRequest(loaded.road(), other, loaded.calls(), loaded.policy());
    }

    /**
     * Returns a resistance with the wind along the train: the part with the square of speed goes with the speed of the air. What a strong
     * wind from behind would push is left out. Side wind is not counted.
     *
     * @param windMps against the train
     */
    static RunningResistance windy(RunningResistance calm, double windMps) {
        double quadratic = calm.quadraticNPerMps2();
        return new RunningResistance(
                calm.constantN() + quadratic * windMps * windMps,
                Math.max(0, calm.linearNPerMps() + 2 * quadratic * windMps),
                quadratic,
                calm.startingN() + (windMps > 0 ? quadratic * windMps * windMps : 0));
    }
}
