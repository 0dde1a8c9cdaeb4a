package org.crosshead.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.crosshead.kernel.braking.BrakeReading;
import org.crosshead.kernel.resistance.TrainBody;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.traction.LocomotiveParameters.Fittings;
import org.crosshead.kernel.traction.LocomotiveParameters.ValveGear;
import org.crosshead.kernel.units.Units;
import org.crosshead.platform.Origin;
import org.crosshead.stock.EngineFigures.EngineBrake;
import org.crosshead.stock.EngineFigures.Supplies;
import org.crosshead.stock.FormationFigures.Vehicle;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.FigureSpec;
import org.crosshead.stock.figure.KnownFigures;
import org.crosshead.stock.figure.VehicleFigure;
import org.jspecify.annotations.Nullable;

/**
 * Turns stored figures into kernel records: the one place of this capability where units change. A figure that is unknown, or an
 * estimate that nobody has accepted, is never replaced by a guess: it is named as missing.
 */
public final class StockModel {

    /**
     * Turning wheels add to the mass that a force must move: from memory 0.06 to 0.08 of it. The greater is taken, by which a
     * train starts and stops in more distance.
     */
    static final double ROTATING_SHARE = 0.08;

    private StockModel() {}

    /** Returns what a class works out to, with one of its engines' own figures in place where an engine is given. */
    public static EngineFigures engine(ClassRevision ofClass, @Nullable EngineRevision engine) {
        LocomotiveClassDraft content = ofClass.content();
        List<SourcedFigure> own = engine == null ? List.of() : engine.content().figures();
        List<SourcedFigure> figures = StoredFigures.merged(content.figures(), own);
        List<MissingFigure> missing = missing(content.code(), FiguresNeeded.ofClass(content), figures);
        if (!missing.isEmpty()) {
            return new EngineFigures.Missing(missing);
        }
        return resolved(content, figures, estimates(content.code(), FiguresNeeded.ofClass(content), figures));
    }

    /** Returns every figure of a class that may be used, in the kernel's units, one engine's own in place where it has them. */
    public static KnownFigures known(ClassRevision ofClass, @Nullable EngineRevision engine) {
        List<SourcedFigure> own = engine == null ? List.of() : engine.content().figures();
        return StoredFigures.usable(StoredFigures.merged(ofClass.content().figures(), own));
    }

    /**
     * Returns what a formation works out to.
     *
     * @param kinds a revision of every kind in it, by code
     * @param trainBrake brake that the train engine works, by which vehicles count as braked
     */
    public static FormationFigures formation(
            FormationDraft formation, Map<String, VehicleKindRevision> kinds, BrakeKind trainBrake) {
        Set<MissingFigure> missing = new LinkedHashSet<>();
        Set<EstimateUsed> estimates = new LinkedHashSet<>();
        for (FormationDraft.Item item : formation.items()) {
            VehicleKindDraft kind = kind(kinds, item.vehicleKindCode());
            Collection<VehicleFigure> needed = FiguresNeeded.ofVehicle(kind, item);
            missing.addAll(missing(kind.code(), needed, kind.figures()));
            estimates.addAll(estimates(kind.code(), needed, kind.figures()));
        }
        return missing.isEmpty()
                ? new FormationFigures.Resolved(vehicles(formation, kinds, trainBrake), List.copyOf(estimates))
                : new FormationFigures.Missing(List.copyOf(missing));
    }

    /** Returns the brake that the formation's first braked vehicle asks of the engine, or NONE. */
    public static BrakeKind trainBrake(FormationDraft formation, Map<String, VehicleKindRevision> kinds) {
        return TrainPipe.kindOf(brakes(formation, kinds));
    }

    /** Returns what an inspector should know of the formation's brakes; nothing is refused for it. */
    public static List<StockProblem> warnings(FormationDraft formation, Map<String, VehicleKindRevision> kinds) {
        return TrainPipe.warnings(brakes(formation, kinds));
    }

    public static LoadSummary summary(FormationFigures.Resolved formation) {
        List<Vehicle> vehicles = formation.vehicles();
        double massKg = formation.massKg();
        double brakedKg = vehicles.stream()
                .filter(Vehicle::braked)
                .mapToDouble(Vehicle::massKg)
                .sum();
        return new LoadSummary(
                Units.longTonsFromKg(massKg),
                Units.longTonsFromKg(
                        vehicles.stream().mapToDouble(Vehicle::tareKg).sum()),
                axles(vehicles),
                Units.feetFromMetres(formation.lengthM()),
                massKg > 0 ? brakedKg / massKg : 0,
                vehicles.size());
    }

    /**
     * Returns the whole train as a body that moves.
     *
     * @param formation null for light engines
     */
    public static TrainBody body(
            List<EngineFigures.Resolved> engines, FormationFigures.@Nullable Resolved formation, ResistanceRule rule) {
        FormationFigures.Resolved load =
                formation == null ? new FormationFigures.Resolved(List.of(), List.of()) : formation;
        return new TrainBody(
                load.massKg()
                        + engines.stream()
                                .mapToDouble(EngineFigures.Resolved::massKg)
                                .sum(),
                ROTATING_SHARE,
                load.lengthM()
                        + engines.stream()
                                .mapToDouble(EngineFigures.Resolved::lengthM)
                                .sum(),
                engines.stream()
                        .map(engine -> engine.resistance(rule))
                        .reduce(load.resistance(rule), (one, other) -> one.plus(other)));
    }

    private static EngineFigures.Resolved resolved(
            LocomotiveClassDraft content, List<SourcedFigure> figures, List<EstimateUsed> estimates) {
        Si si = new Si(StoredFigures.usable(figures));
        double tenderMassKg = content.tenderEngine() ? si.of(ClassFigure.TENDER_WEIGHT_FULL) : 0;
        double engineMassKg = si.of(ClassFigure.ENGINE_WEIGHT);
        return new EngineFigures.Resolved(
                parameters(content, si),
                engineMassKg,
                tenderMassKg,
                si.of(ClassFigure.LENGTH),
                si.whole(ClassFigure.AXLES),
                new Supplies(si.of(ClassFigure.TANK_CAPACITY), si.of(ClassFigure.COAL_CAPACITY)),
                brake(content, si),
                figures,
                estimates);
    }

    private static LocomotiveParameters parameters(LocomotiveClassDraft content, Si si) {
        Cylinders cylinders = new Cylinders(
                (int) si.of(ClassFigure.CYLINDER_COUNT),
                si.of(ClassFigure.CYLINDER_BORE),
                si.of(ClassFigure.CYLINDER_STROKE),
                si.of(ClassFigure.DRIVING_WHEEL));
        ValveGear valveGear = new ValveGear(
                content.valveFamily(),
                si.of(ClassFigure.FULL_GEAR_CUTOFF),
                si.of(ClassFigure.LEAST_CUTOFF),
                ValveDimensions.form(content.valveFamily(), si.known()));
        Boiler boiler = new Boiler(
                si.of(ClassFigure.BOILER_PRESSURE),
                si.of(ClassFigure.GRATE_AREA),
                si.of(ClassFigure.HEATING_SURFACE),
                si.of(ClassFigure.SUPERHEATER_SURFACE),
                si.of(ClassFigure.BOILER_WATER_FULL),
                si.of(ClassFigure.BOILER_WATER_LEAST),
                si.of(ClassFigure.COAL_CALORIFIC_VALUE),
                si.ifKnown(ClassFigure.INJECTOR_DELIVERY),
                si.ifKnown(ClassFigure.BOILER_PRESSURE_LEAST));
        Fittings fittings = new Fittings(
                Fittings.TANK_C + si.ifKnown(ClassFigure.FEED_HEATING).orElse(0),
                si.ifKnown(ClassFigure.LEAKAGE).orElse(0));
        double adhesiveKg = si.of(ClassFigure.ADHESIVE_WEIGHT);
        return new LocomotiveParameters(
                cylinders,
                valveGear,
                boiler,
                fittings,
                adhesiveKg,
                Math.min(
                        adhesiveKg,
                        si.ifKnown(ClassFigure.ADHESIVE_WEIGHT_EMPTY).orElse(adhesiveKg)),
                si.of(ClassFigure.MAX_SPEED));
    }

    private static EngineBrake brake(LocomotiveClassDraft content, Si si) {
        boolean power = FiguresNeeded.hasPowerBrake(content);
        return new EngineBrake(
                content.engineBrake(),
                content.trainBrake(),
                power ? si.of(ClassFigure.ENGINE_BRAKE_FORCE) : 0,
                power && content.tenderEngine() ? si.of(ClassFigure.TENDER_BRAKE_FORCE) : 0,
                si.ifKnown(ClassFigure.BRAKED_WEIGHT),
                si.ifKnown(ClassFigure.TRAIN_VACUUM).orElse(BrakeReading.twentyOneInchesPa()));
    }

    private static List<Vehicle> vehicles(
            FormationDraft formation, Map<String, VehicleKindRevision> kinds, BrakeKind trainBrake) {
        int reach = TrainPipe.reach(brakes(formation, kinds), trainBrake);
        List<Vehicle> vehicles = new ArrayList<>();
        for (FormationDraft.Item item : formation.items()) {
            VehicleKindDraft kind = kind(kinds, item.vehicleKindCode());
            for (int i = 0; i < item.count(); i++) {
                vehicles.add(vehicle(kind, item, vehicles.size() < reach && kind.brake() == trainBrake));
            }
        }
        return vehicles;
    }

    private static Vehicle vehicle(VehicleKindDraft kind, FormationDraft.Item item, boolean reached) {
        Si si = new Si(StoredFigures.usable(kind.figures()));
        Double loadTons = item.loadTons();
        double tareKg = si.of(VehicleFigure.TARE);
        double massKg = tareKg + (loadTons == null ? si.of(VehicleFigure.LOAD) : Units.kgFromLongTons(loadTons));
        return new Vehicle(
                kind.code(),
                item.vehicleNumber(),
                kind.family(),
                tareKg,
                massKg,
                si.of(VehicleFigure.LENGTH),
                si.whole(VehicleFigure.AXLES),
                kind.brake(),
                TrainPipe.POWER_BRAKES.contains(kind.brake()) ? si.of(VehicleFigure.BRAKE_BLOCK_FORCE) : 0,
                si.ifKnown(VehicleFigure.HAND_BRAKE_FORCE),
                si.ifKnown(VehicleFigure.BRAKED_WEIGHT),
                si.ifKnown(VehicleFigure.BRAKE_VACUUM),
                si.ifKnown(VehicleFigure.COMPOSITION_BLOCKS).orElse(0),
                reached && item.brakeWorking());
    }

    private static List<BrakeKind> brakes(FormationDraft formation, Map<String, VehicleKindRevision> kinds) {
        List<BrakeKind> brakes = new ArrayList<>();
        for (FormationDraft.Item item : formation.items()) {
            for (int i = 0; i < item.count(); i++) {
                brakes.add(kind(kinds, item.vehicleKindCode()).brake());
            }
        }
        return brakes;
    }

    private static VehicleKindDraft kind(Map<String, VehicleKindRevision> kinds, String code) {
        VehicleKindRevision kind = kinds.get(code);
        if (kind == null) {
            throw new IllegalArgumentException("kinds must hold " + code);
        }
        return kind.content();
    }

    private static OptionalInt axles(List<Vehicle> vehicles) {
        return vehicles.stream().anyMatch(vehicle -> vehicle.axles().isEmpty())
                ? OptionalInt.empty()
                : OptionalInt.of(vehicles.stream()
                        .mapToInt(vehicle -> vehicle.axles().orElseThrow())
                        .sum());
    }

    private static List<MissingFigure> missing(
            String subject, Collection<? extends FigureSpec> needed, List<SourcedFigure> figures) {
        KnownFigures usable = StoredFigures.usable(figures);
        return needed.stream()
                .filter(spec -> !usable.has(spec))
                .map(spec -> new MissingFigure(
                        subject, spec, Estimates.waiting(spec, figures).orElse(null)))
                .toList();
    }

    private static List<EstimateUsed> estimates(
            String subject, Collection<? extends FigureSpec> needed, List<SourcedFigure> figures) {
        return figures.stream()
                .filter(figure -> figure.origin() == Origin.ESTIMATED && figure.accepted())
                .filter(figure -> needed.stream().anyMatch(spec -> spec.key().equals(figure.key())))
                .map(figure -> new EstimateUsed(subject, figure))
                .toList();
    }

    /** Figures that have been found to be known. */
    private record Si(KnownFigures known) {

        double of(FigureSpec spec) {
            return known.si(spec).orElseThrow();
        }

        OptionalDouble ifKnown(FigureSpec spec) {
            return known.si(spec).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        }

        OptionalInt whole(FigureSpec spec) {
            return known.si(spec).map(value -> OptionalInt.of(value.intValue())).orElseGet(OptionalInt::empty);
        }
    }
}
