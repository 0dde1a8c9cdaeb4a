package org.crosshead.kernel.traction;

import java.util.Optional;
import org.crosshead.kernel.boiler.ClosedBoiler;
import org.crosshead.kernel.boiler.Furnace;
import org.crosshead.kernel.boiler.Injectors;
import org.crosshead.kernel.boiler.SafetyValves;
import org.crosshead.kernel.cylinder.CylinderTable;
import org.crosshead.kernel.steam.Orifice;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.traction.LocomotiveParameters.Fittings;
import org.crosshead.kernel.units.Check;
import org.crosshead.kernel.units.Units;

/**
 * A simple-expansion engine: mean pressure and steam by the indicator diagrams of its class; a closed boiler heated by a fire that
 * the blast draws; a rail that holds so much. The figures marked as estimates in docs/physics.md are this project's own.
 */
public final class SteamEngine implements Engine {

    /**
     * Greatest share of chest pressure that reaches the rim: that of the tractive effort formula (key EFFORTS in docs/sources.md),
     * by which engines are rated. The diagram alone gives more at a crawl in full gear.
     */
    static final double SHARE_MAX = TractiveEffort.CUSTOMARY_SHARE;

    /** Chest pressure with the first valve only, as a share of boiler pressure: an estimate. */
    static final double FIRST_VALVE_CHEST_SHARE = 0.7;

    /** Share of the pull that is left with the cylinder cocks open: an estimate. */
    private static final double COCKS_SHARE = 0.95;

    private static final double STEP_LONGEST_S = 60;
    private static final double SUPERHEAT_PER_SHARE_K = 600;
    private static final double SUPERHEAT_MAX_K = 200;
    private static final double STEAM_SPACE_SHARE = 0.3;
    private static final double METAL_PER_WATER = 2;
    private static final double IRON_J_PER_KG_K = 480;
    /** Enthalpy of water for each degree above nought, with that of the tank at 15 C 63 kJ/kg. */
    private static final double WATER_J_PER_KG_K = 4_200;

    private static final double EJECTOR_KG_PER_S = 0.02;

    /** Steam of the blower wide open: an estimate. */
    private static final double BLOWER_KG_PER_S = 0.06;

    /** Feed where the injectors' delivery is not known, as a share of the greatest evaporation: an estimate. */
    private static final double FEED_SHARE_UNKNOWN = 1.3;

    private final LocomotiveParameters parameters;
    private final Superheat steam;
    private final ClosedBoiler boiler;
    private final Furnace furnace;
    private final SafetyValves valves;
    private final Optional<Injectors> injectors;
    /** Steam whose blast draws air for the greatest rate of burning. */
    private final double blastFullKgPerS;

    private final CylinderTable table;
    /** Area of all pistons. */
    private final double pistonsM2;

    private final double heatMostW;
    private final double steadyKgPerS;

    private SteamEngine(LocomotiveParameters parameters) {
        this.parameters = parameters;
        Boiler given = parameters.boiler();
        steam = superheat(given);
        double waterVolumeM3 = given.waterFullKg()
                * SaturatedSteam.table().waterVolume(given.pressureMaxPa() + SaturatedSteam.ATMOSPHERE_PA);
        boiler = new ClosedBoiler(
                waterVolumeM3 * (1 + STEAM_SPACE_SHARE), METAL_PER_WATER * given.waterFullKg() * IRON_J_PER_KG_K);
        furnace = new Furnace(given.grateM2(), given.heatingSurfaceM2(), given.coalHeatJPerKg());
        steadyKgPerS = EJECTOR_KG_PER_S + parameters.fittings().steadyKgPerS();
        heatMostW = furnace.heatW(furnace.coalMaxKgPerS());
        Cylinders cylinders = parameters.cylinders();
        pistonsM2 = cylinders.count() * Math.PI / 4 * cylinders.boreM() * cylinders.boreM();
        table = CylinderTable.of(
                new CylinderTable.Bore(cylinders.boreM(), cylinders.strokeM()),
                parameters.valveGear().form(),
                steam,
                given.pressureMaxPa());
        blastFullKgPerS = evaporationMaxKgPerS(given.pressureMaxPa());
        valves = SafetyValves.forBoiler(absolute(given.pressureMaxPa()), blastFullKgPerS);
        injectors = given.injectorKgPerS().isPresent()
                ? Optional.of(new Injectors(given.injectorKgPerS().getAsDouble(), given.pressureMaxPa()))
                : Optional.empty();
    }

    /** Returns the engine that these figures describe. */
    public static SteamEngine of(LocomotiveParameters parameters) {
        return new SteamEngine(parameters);
    }

    /** Returns the steam of a boiler: hotter than saturated by the superheater's share of the surface, an estimate. */
    public static Superheat superheat(Boiler boiler) {
        double share = boiler.superheaterM2() / (boiler.superheaterM2() + boiler.heatingSurfaceM2());
        return Superheat.of(Math.min(SUPERHEAT_MAX_K, SUPERHEAT_PER_SHARE_K * share));
    }

    @Override
    public LocomotiveParameters parameters() {
        return parameters;
    }

    @Override
    public Pull pull(EngineState state, Controls controls, double speedMps, RailState rail) {
        Check.within("speedMps", speedMps, 0, 1.5 * parameters.speedMaxMps());
        double railN = Adhesion.coefficient(rail, speedMps) * adhesiveKg(state) * Units.GRAVITY_MPS2;
        double chestPa = state.pressurePa() * chestShare(controls.regulator());
        double cutoff = Math.min(controls.cutoff(), parameters.valveGear().cutoffFull());
        double pistonMps = parameters.cylinders().pistonSpeedMps(speedMps);
        double meanPa = Math.min(table.meanPressurePa(chestPa, cutoff, pistonMps), SHARE_MAX * chestPa);
        double cylinderN = meanPa * parameters.cylinders().forcePerPressureM2();
        if (chestPa <= 0 || cylinderN <= 0) {
            return new Pull(0, 0, Double.POSITIVE_INFINITY, railN, 0, LimitedBy.CYLINDER);
        }
        double steamKgPerS = table.steamKgPerM3(chestPa, cutoff, pistonMps) * pistonsM2 * pistonMps;
        double forceN = Math.min(cylinderN, railN);
        double usedKgPerS = steamKgPerS * forceN / cylinderN;
        double boilerN = steamKgPerS > 0
                ? cylinderN * evaporationMaxKgPerS(state.pressurePa()) / steamKgPerS
                : Double.POSITIVE_INFINITY;
        return new Pull(forceN, cylinderN, boilerN, railN, usedKgPerS, LimitedBy.least(cylinderN, boilerN, railN));
    }

    @Override
    public Pull cocksOpen(Pull pull, EngineState state, Controls controls) {
        double chestPa = absolute(state.pressurePa() * chestShare(controls.regulator()));
        double lostKgPerS = parameters.cylinders().count()
                * ShortMove.COCK_M2
                * Orifice.flux(chestPa, 1 / steam.density(chestPa), SaturatedSteam.ATMOSPHERE_PA);
        return new Pull(
                COCKS_SHARE * pull.forceN(),
                COCKS_SHARE * pull.cylinderForceN(),
                pull.boilerForceN(),
                pull.railForceN(),
                pull.steamKgPerS() + lostKgPerS,
                pull.limitedBy());
    }

    @Override
    public EngineState after(EngineState state, double steamKgPerS, Firing firing, double durationS) {
        Check.within("durationS", durationS, 0, STEP_LONGEST_S);
        double p = absolute(state.pressurePa());
        double coalKg = firing.coalKgPerS() * durationS;
        double air = air(steamKgPerS, firing.blower(), firing.dampers());
        double fireKg = furnace.fireAfterKg(state.fireKg(), firing.coalKgPerS(), air, durationS);
        double steamJPerKg = SaturatedSteam.table().steamEnthalpy(p);
        double heatJ = boilerShare(p, steamJPerKg, steamKgPerS > 0)
                * furnace.heatJ(state.fireKg() + coalKg - fireKg, durationS);
        double takenKg = (steamKgPerS + auxiliaryKgPerS(firing.blower()) + firing.ejectorKgPerS()) * durationS;
        double fedKg = firing.feedKgPerS() * durationS;
        ClosedBoiler.Sums sums = boiler.sums(new ClosedBoiler.Content(p, state.waterKg()))
                .plus(fedKg - takenKg, heatJ + fedKg * feedJPerKg(steamKgPerS > 0) - takenKg * steamJPerKg);
        ClosedBoiler.Content content = boiler.content(sums, SaturatedSteam.PRESSURE_GREATEST_PA, p);
        boolean blowing = false;
        if (state.blowing() || content.pressurePa() > valves.liftPa()) {
            content = blown(sums, content, p, durationS);
            blowing = content.pressurePa() > valves.shutPa();
        }
        return new EngineState(
                Math.max(0, content.pressurePa() - SaturatedSteam.ATMOSPHERE_PA),
                content.waterKg(),
                fireKg,
                blowing,
                state.suppliesShare());
    }

    @Override
    public double adhesiveKg(EngineState state) {
        double emptyKg = parameters.adhesiveEmptyKg();
        return emptyKg + state.suppliesShare() * (parameters.adhesiveMassKg() - emptyKg);
    }

    private double feedJPerKg(boolean steaming) {
        return WATER_J_PER_KG_K * (steaming ? parameters.fittings().feedHeatedC() : Fittings.TANK_C);
    }

    /** Returns what is left when the safety valves blow for a while, or until they shut. */
    private ClosedBoiler.Content blown(
            ClosedBoiler.Sums sums, ClosedBoiler.Content full, double startPa, double durationS) {
        if (full.pressurePa() <= valves.shutPa()) {
            return full;
        }
        double steamJPerKg = SaturatedSteam.table().steamEnthalpy(startPa);
        double blownKg = valves.dischargeKgPerS(full.pressurePa()) * durationS;
        ClosedBoiler.Content left = boiler.content(
                sums.plus(-blownKg, -blownKg * steamJPerKg), SaturatedSteam.PRESSURE_GREATEST_PA, startPa);
        return left.pressurePa() > valves.shutPa() ? left : boiler.blownTo(sums, valves.shutPa(), steamJPerKg);
    }

    @Override
    public HeatAccount heat(EngineState before, EngineState after, Work work) {
        double p = absolute(before.pressurePa());
        double fedKg = work.feedKgPerS() * work.durationS();
        double takenKg = work.steamKgPerS() * work.durationS();
        double burntKg = before.fireKg() + work.coalKgPerS() * work.durationS() - after.fireKg();
        ClosedBoiler.Sums then = boiler.sums(new ClosedBoiler.Content(p, before.waterKg()));
        ClosedBoiler.Sums now = boiler.sums(new ClosedBoiler.Content(absolute(after.pressurePa()), after.waterKg()));
        double blownKg = then.massKg() + fedKg - takenKg - now.massKg();
        SaturatedSteam table = SaturatedSteam.table();
        return new HeatAccount(
                boilerShare(p, table.steamEnthalpy(p), work.steaming()) * furnace.heatJ(burntKg, work.durationS()),
                fedKg * feedJPerKg(work.steaming()),
                takenKg * table.steamEnthalpy(p),
                blownKg * table.steamEnthalpy(p),
                now.energyJ() - then.energyJ());
    }

    @Override
    public Furnace furnace() {
        return furnace;
    }

    @Override
    public double air(double steamKgPerS, double blower, double dampers) {
        return Furnace.air(steamKgPerS / blastFullKgPerS, blower, dampers);
    }

    @Override
    public double auxiliaryKgPerS(double blower) {
        return steadyKgPerS + BLOWER_KG_PER_S * blower;
    }

    @Override
    public double feedMaxKgPerS(double pressurePa) {
        return injectors.isPresent()
                ? injectors.get().mostKgPerS(pressurePa, Fittings.TANK_C)
                : FEED_SHARE_UNKNOWN * evaporationMaxKgPerS(pressurePa);
    }

    @Override
    public double evaporationMaxKgPerS(double pressurePa) {
        double perKgJ = steam.enthalpy(absolute(pressurePa)) - feedJPerKg(true);
        double made = heatMostW / perKgJ;
        return Math.max(0, Math.min(made, furnace.surfaceLimitKgPerS()) - steadyKgPerS);
    }

    @Override
    public double reserveKg(EngineState state) {
        double p = absolute(state.pressurePa());
        ClosedBoiler.Sums sums = boiler.sums(new ClosedBoiler.Content(p, state.waterKg()));
        double aboveFeedJ = sums.energyJ() - sums.massKg() * feedJPerKg(true);
        return aboveFeedJ / (SaturatedSteam.table().steamEnthalpy(p) - feedJPerKg(true));
    }

    @Override
    public double coalForSteamKgPerS(double steamKgPerS, double pressurePa) {
        double perKgJ = steam.enthalpy(absolute(pressurePa)) - feedJPerKg(true);
        return furnace.coalKgPerS((steamKgPerS + steadyKgPerS) * perKgJ);
    }

    private static double chestShare(double regulator) {
        return regulator <= Controls.FIRST_VALVE
                ? FIRST_VALVE_CHEST_SHARE * regulator / Controls.FIRST_VALVE
                : FIRST_VALVE_CHEST_SHARE
                        + (1 - FIRST_VALVE_CHEST_SHARE)
                                * (regulator - Controls.FIRST_VALVE)
                                / (1 - Controls.FIRST_VALVE);
    }

    /** Returns which part of the fire's heat goes to the boiler's water; the rest superheats. */
    private double boilerShare(double p, double dryJPerKg, boolean steaming) {
        double feedJPerKg = feedJPerKg(steaming);
        return (dryJPerKg - feedJPerKg) / (steam.enthalpy(p) - feedJPerKg);
    }

    private static double absolute(double gaugePa) {
        return gaugePa + SaturatedSteam.ATMOSPHERE_PA;
    }
}
