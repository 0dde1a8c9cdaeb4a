package org.crosshead.kernel.motion;

import java.util.List;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.units.Check;

/**
 * The train of a run.
 *
 * @param body whole train with the engines that work from end to end
 * @param trailing the hauled part of the body
 * @param engines the train engine first; at least one
 * @param service how the train is braked in ordinary running
 * @param ejector what the train engine's large ejector takes to release the brake
 * @param helpN steady pull from outside, added to that of the engines, 0 or more; only where the least assistance is sought
 */
public record MakeUp(
        TrainBody body,
        TrailingLoad trailing,
        List<EngineAtWork> engines,
        Application service,
        Ejector ejector,
        double helpN) {

    /**
     * Share of running resistance that is counted on where a train must slow or stop. Published resistances differ by a half, and
     * those of this project are on the high side for loads; the low side is the safe one here. An estimate.
     */
    public static final double RESISTANCE_CREDITED = 0.5;

    public MakeUp(TrainBody body, TrailingLoad trailing, List<EngineAtWork> engines, Application service) {
        this(body, trailing, engines, service, Ejector.NONE, 0);
    }

    /** Returns this train with what releasing its brake takes. */
    public MakeUp releasing(Ejector takes) {
        return new MakeUp(body, trailing, engines, service, takes, helpN);
    }

    /**
     * The large ejector of a vacuum brake, open while the brake is released.
     *
     * @param kgPerS steam that it takes
     * @param durationS how long it is open for one release
     */
    public record Ejector(double kgPerS, double durationS) {

        /** No vacuum brake: nothing is taken. */
        public static final Ejector NONE = new Ejector(0, 0);

        public Ejector {
            Check.within("kgPerS", kgPerS, 0, 2);
            Check.within("durationS", durationS, 0, 300);
        }
    }

    public MakeUp {
        engines = List.copyOf(engines);
        Check.notNegative("helpN", helpN);
        Check.that(!engines.isEmpty(), "engines must have at least one engine");
        Check.that(trailing.massKg() < body.massKg(), "trailing mass must be less than the mass of the whole train");
        Check.that(service.kind() == Application.Kind.SERVICE, "service must be an application of kind SERVICE");
    }

    /** Returns this train with its trailing load made {@code share} times as heavy; its length is kept. */
    MakeUp withTrailing(double share) {
        double more = share - 1;
        TrainBody scaled = new TrainBody(
                body.massKg() + more * trailing.massKg(),
                body.rotatingShare(),
                body.lengthM(),
                Resistances.scaled(body.resistance(), trailing.resistance(), more));
        TrailingLoad load = new TrailingLoad(
                share * trailing.massKg(), trailing.resistance().times(share));
        return new MakeUp(scaled, load, engines, service, ejector, helpN);
    }

    MakeUp withHelp(double more) {
        return new MakeUp(body, trailing, engines, service, ejector, more);
    }
}
