package org.crosshead.briefing.build;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.build.TrainInputs.EngineAtTrain;
import org.crosshead.kernel.braking.Application;
import org.crosshead.kernel.braking.BrakeForce;
import org.crosshead.kernel.braking.CastIronBlocks;
import org.crosshead.kernel.braking.ContinuousBrake;
import org.crosshead.kernel.braking.Release;
import org.crosshead.kernel.braking.ServiceBrakes;
import org.crosshead.kernel.motion.Assistance;
import org.crosshead.kernel.motion.Call;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.MakeUp;
import org.crosshead.kernel.motion.RailStretch;
import org.crosshead.kernel.motion.RunPolicy;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.motion.RunRoad;
import org.crosshead.kernel.motion.Supply;
import org.crosshead.kernel.motion.TrailingLoad;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.track.SpeedLimits;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;
import org.crosshead.route.TrainKind;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineMaker;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.ResistanceRule;
import org.crosshead.stock.StockModel;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.jspecify.annotations.Nullable;

/** The train as the kernel takes it: what is stored, in SI, with the formulas chosen for this project. */
final class TrainModel {

    private static final double HOUR_S = 3_600;
    private static final double COAST_S = 30;
    private static final double WATER_STOP_LEAST_S = 240;
    /** Fire at the start, as a share of a full one: made up and burnt through before departure. */
    private static final double FIRE_SHARE = 0.9;

    private static final double SPEED_UNFITTED_MPH = 25;
    /** Steam of the large ejector: an estimate, some ten times that of the small one. */
    private static final double LARGE_EJECTOR_KG_PER_S = 0.2;

    private final TrainInputs inputs;
    private final List<Engine> engines = new ArrayList<>();
    private final TrainBody body;
    private final FormationFigures.@Nullable Resolved consist;
    private final ContinuousBrake brake;
    private final RunRequest request;

    TrainModel(TrainInputs inputs, EngineMaker maker) {
        this.inputs = inputs;
        consist = inputs.consist() == null ? null : inputs.consist().figures();
        List<EngineFigures.Resolved> whole = new ArrayList<>();
        for (EngineAtTrain engine : inputs.engines()) {
            EngineFigures.Resolved figures = resolved(engine);
            engines.add(maker.of(engines.isEmpty() ? heating(figures.parameters()) : figures.parameters()));
            if (isWhole(engine.turn())) {
                whole.add(figures);
            }
        }
        body = longer(StockModel.body(whole, consist, ResistanceRule.USUAL), assistingM());
        brake = TrainBrakes.of(inputs, resolved(inputs.engines().get(0)), consist, body.lengthM(), poorRail());
        request = made();
    }

    /** The train engine with the steam that heats its train. */
    private LocomotiveParameters heating(LocomotiveParameters parameters) {
        return parameters.drawing(parameters.fittings().steadyKgPerS() + heatingKgPerS(inputs));
    }

    /** Returns the steam that heats the train, nothing where it is not heated. */
    static double heatingKgPerS(TrainInputs inputs) {
        FormationFigures.Resolved load =
                inputs.consist() == null ? null : inputs.consist().figures();
        return inputs.content().heated() && load != null
                ? load.vehicles().size() * Units.kgFromLb(inputs.policyValue(Policy.HEATING_STEAM)) / HOUR_S
                : 0;
    }

    RunRequest request() {
        return request;
    }

    private RunRequest made() {
        Track track = track();
        MakeUp makeUp = new MakeUp(body, trailing(), work(), service()).releasing(ejector());
        return new RunRequest(
                new RunRoad(track, inputs.content().rail(), poorRail(), reversalsM()),
                makeUp,
                calls(),
                new RunPolicy(
                        inputs.policyValue(Policy.BRAKING_MARGIN),
                        COAST_S,
                        speedMaxMps(),
                        new RunPolicy.Weights(
                                inputs.policyValue(Policy.WATER_WEIGHT),
                                inputs.policyValue(Policy.SLIP_WEIGHT),
                                inputs.policyValue(Policy.LATE_WEIGHT))));
    }

    /**
     * Returns the train as a body. Engines that assist over a part of the path count with their length throughout, which clears
     * limits later and fills the brake later; with mass and resistance only where they work.
     */
    TrainBody body() {
        return body;
    }

    /** Returns the mass of the train with the engines that assist at a place. */
    double massKg(double atM) {
        double assistingKg = request.train().engines().stream()
                .filter(engine -> engine.worksAt(atM))
                .mapToDouble(engine -> engine.assistance().massKg())
                .sum();
        return body.massKg() + assistingKg;
    }

    private double assistingM() {
        return inputs.engines().stream()
                .filter(engine -> !isWhole(engine.turn()))
                .mapToDouble(engine -> resolved(engine).lengthM())
                .sum();
    }

    private static TrainBody longer(TrainBody body, double byM) {
        return new TrainBody(body.massKg(), body.rotatingShare(), body.lengthM() + byM, body.resistance());
    }

    FormationFigures.@Nullable Resolved consist() {
        return consist;
    }

    List<Engine> engines() {
        return engines;
    }

    Engine engine(int index) {
        return engines.get(index);
    }

    ContinuousBrake brake() {
        return brake;
    }

    Application service() {
        return service(brake);
    }

    /** Returns a service application of a brake that has so much of its force. */
    Application service(double recovered) {
        return service(new ContinuousBrake(
                brake.means(), brake.timing(), brake.lengthM(), brake.blocks().times(recovered)));
    }

    /** Returns the force of a service application that is held for long, as on a fall. */
    BrakeForce heldLong() {
        return service(CastIronBlocks.HELD_LONG_OF_WET).force();
    }

    private Application service(ContinuousBrake brake) {
        double share = inputs.policyValue(Policy.SERVICE_SHARE) / ServiceBrakes.SERVICE_SHARE;
        ContinuousBrake shared = new ContinuousBrake(
                brake.means(), brake.timing(), brake.lengthM(), brake.blocks().times(share));
        return ServiceBrakes.service(shared, inputs.policyValue(Policy.REACTION_TIME));
    }

    /** Returns the applications on a rail that holds this share of the weight on braked wheels: service, then emergency. */
    List<Application> onRail(double share) {
        ContinuousBrake there =
                TrainBrakes.onRail(brake, TrainBrakes.railShare(inputs.content().rail(), poorRail()), share);
        return List.of(service(there), ServiceBrakes.emergency(there, inputs.policyValue(Policy.REACTION_TIME)));
    }

    /** Returns the braked weight percentage, where the standard's rule can be used beside the blocks' force. */
    OptionalDouble brakedPercent() {
        return consist == null || !BrakedWeight.applies(brake)
                ? OptionalDouble.empty()
                : BrakedWeight.percent(resolved(inputs.engines().get(0)), consist, body);
    }

    Application emergency() {
        return ServiceBrakes.emergency(brake, inputs.policyValue(Policy.REACTION_TIME));
    }

    /** The path with the greatest speeds of assisting engines as limits where they work. */
    private Track track() {
        Track road = inputs.path().track(speedMaxMps());
        List<SpeedLimits.Length> lengths = new ArrayList<>(road.limits().lengths());
        for (int i = 0; i < engines.size(); i++) {
            EngineAtTrain at = inputs.engines().get(i);
            if (!isWhole(at.turn())) {
                Assistance range = assistance(at);
                double toM = Math.min(inputs.path().lengthM(), range.toM());
                lengths.add(new SpeedLimits.Length(
                        range.fromM(), toM, engines.get(i).parameters().speedMaxMps()));
            }
        }
        return new Track(
                road.gradients(), road.curves(), SpeedLimits.of(inputs.path().lengthM(), speedMaxMps(), lengths));
    }

    /** Returns the train as it counts for braking: with the low side of its resistance. */
    TrainBody brakingBody() {
        return new TrainBody(
                body.massKg(),
                body.rotatingShare(),
                body.lengthM(),
                body.resistance().times(MakeUp.RESISTANCE_CREDITED));
    }

    /** Returns the least of the greatest speeds of the engines that work throughout, the vehicles and the kind of train. */
    double speedMaxMps() {
        double engine = Double.POSITIVE_INFINITY;
        for (int i = 0; i < engines.size(); i++) {
            if (isWhole(inputs.engines().get(i).turn())) {
                engine = Math.min(engine, engines.get(i).parameters().speedMaxMps());
            }
        }
        engine = Math.min(engine, VehicleSpeeds.leastMps(inputs.consist()));
        return inputs.content().kind() == TrainKind.UNFITTED_GOODS
                ? Math.min(engine, Units.mpsFromMph(SPEED_UNFITTED_MPH))
                : engine;
    }

    /** Returns when the run begins: booked departure of the first call. */
    Instant startsAt() {
        return Objects.requireNonNull(inputs.content().calls().get(0).departure());
    }

    /** The large ejector is open for half the time in which the brake recovers; engines with other brakes have none. */
    private MakeUp.Ejector ejector() {
        return brake.means() == ContinuousBrake.Means.VACUUM
                ? new MakeUp.Ejector(LARGE_EJECTOR_KG_PER_S, Release.recoverS(brake) / 2)
                : MakeUp.Ejector.NONE;
    }

    /** Returns the wheels that the working brake acts on; 0 where the axles of a braked vehicle or of the engine are not known. */
    int brakedWheels() {
        EngineFigures.Resolved engine = resolved(inputs.engines().get(0));
        int axles = engine.axles().orElse(0);
        List<FormationFigures.Vehicle> vehicles = consist == null ? List.of() : consist.vehicles();
        for (FormationFigures.Vehicle vehicle : vehicles) {
            if (vehicle.braked() && vehicle.axles().isEmpty()) {
                return 0;
            }
            axles += vehicle.braked() ? vehicle.axles().orElse(0) : 0;
        }
        return engine.axles().isEmpty() ? 0 : 2 * axles;
    }

    private static EngineFigures.Resolved resolved(EngineAtTrain engine) {
        return Objects.requireNonNull(engine.figures());
    }

    static boolean isWhole(EngineTurn turn) {
        return turn.fromPlace() == null && turn.toPlace() == null;
    }

    private TrailingLoad trailing() {
        return consist == null
                ? TrailingLoad.NONE
                : new TrailingLoad(consist.massKg(), consist.resistance(ResistanceRule.USUAL));
    }

    private List<EngineAtWork> work() {
        List<EngineAtWork> work = new ArrayList<>();
        for (int i = 0; i < engines.size(); i++) {
            EngineAtTrain at = inputs.engines().get(i);
            Assistance assistance = isWhole(at.turn()) ? Assistance.THROUGHOUT : assistance(at);
            work.add(new EngineAtWork(
                    engines.get(i), state(engines.get(i), at.turn()), supply(at.turn(), resolved(at)), assistance));
        }
        return work;
    }

    private Assistance assistance(EngineAtTrain engine) {
        EngineFigures.Resolved figures = resolved(engine);
        double fromM =
                engine.turn().fromPlace() == null ? 0 : callM(engine.turn().fromPlace());
        double toM = engine.turn().toPlace() == null
                ? inputs.path().lengthM()
                : callM(engine.turn().toPlace());
        return new Assistance(fromM, toM, figures.massKg(), figures.resistance(ResistanceRule.USUAL));
    }

    private double callM(String place) {
        return inputs.content().calls().stream()
                .filter(call -> call.place().equals(place))
                .mapToDouble(call -> inputs.path().pathM(call.legNumber(), call.atMeasure()))
                .findFirst()
                .orElseThrow();
    }

    private static EngineState state(Engine engine, EngineTurn turn) {
        Boiler boiler = engine.parameters().boiler();
        double pressurePa = Math.min(boiler.pressureMaxPa(), Units.paFromPsi(turn.pressurePsi()));
        double waterKg = boiler.waterLeastKg() + turn.glassShare() * boiler.glassKg();
        return new EngineState(
                pressurePa, waterKg, FIRE_SHARE * engine.furnace().fullKg());
    }

    private static Supply supply(EngineTurn turn, EngineFigures.Resolved figures) {
        double tankFullKg = figures.supplies().tankFullKg();
        double tankKg = turn.waterGallons() == null
                ? tankFullKg
                : Math.min(tankFullKg, Units.kgFromGallons(turn.waterGallons()));
        double coalKg = turn.coalCwt() == null ? figures.supplies().coalFullKg() : Units.kgFromCwt(turn.coalCwt());
        return new Supply(
                tankKg, tankFullKg, coalKg, Math.max(coalKg, figures.supplies().coalFullKg()));
    }

    private List<Call> calls() {
        List<Call> calls = new ArrayList<>();
        int last = inputs.content().calls().size() - 1;
        for (int i = 0; i <= last; i++) {
            TrainDraft.Call call = inputs.content().calls().get(i);
            double atM = inputs.path().pathM(call.legNumber(), call.atMeasure());
            boolean stops = call.stops() || i == 0 || i == last;
            OptionalDouble arrival =
                    seconds(i == 0 ? null : call.arrival() == null ? passing(call, stops) : call.arrival());
            OptionalDouble departure = seconds(i == last || !stops ? null : call.departure());
            double leastS = call.takesWater() ? WATER_STOP_LEAST_S : 0;
            calls.add(new Call(
                    atM,
                    stops,
                    new Call.Times(arrival, departure),
                    new Call.Standing(i == 0 || i == last ? 0 : leastS, call.takesWater())));
        }
        return calls;
    }

    private static @Nullable Instant passing(TrainDraft.Call call, boolean stops) {
        return stops ? null : call.departure();
    }

    private OptionalDouble seconds(@Nullable Instant moment) {
        return moment == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        (double) Duration.between(startsAt(), moment).toSeconds());
    }

    /** Returns where the train reverses, at the very place of the call there. */
    private List<Double> reversalsM() {
        List<Double> atCalls = new ArrayList<>();
        for (double reversalM : inputs.path().reversalsM()) {
            inputs.content().calls().stream()
                    .mapToDouble(call -> inputs.path().pathM(call.legNumber(), call.atMeasure()))
                    .filter(callM -> Math.abs(callM - reversalM) < InputsReader.CALLS_APART_M)
                    .findFirst()
                    .ifPresent(atCalls::add);
        }
        return atCalls;
    }

    private List<RailStretch> poorRail() {
        RailState poor = inputs.content().rail() == RailState.DRY ? RailState.WET : RailState.GREASY;
        List<RailStretch> stretches = new ArrayList<>();
        for (PathFeature feature : inputs.path().features()) {
            Double toM = feature.toM();
            if (feature.feature().kind() == FeatureKind.POOR_ADHESION && toM != null && toM > feature.fromM()) {
                stretches.add(new RailStretch(Math.max(0, feature.fromM()), toM, poor));
            }
        }
        return stretches;
    }
}
