package org.crosshead.kernel.traction;

import org.crosshead.kernel.steam.Orifice;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.units.Check;

/**
 * A short movement on the level in full gear: the regulator opened for a moment and shut again. Steam chest, pipes and superheater
 * are one volume between regulator and valves: it fills through the regulator's opening, choked where it is, and empties through
 * the cylinders as they turn, and through the cylinder cocks; so the pull comes after the handle, and stays after it.
 *
 * <p>Steam expands by the hyperbola. The volumes and openings are estimates of this project: chest and pipes as large as all
 * cylinders, superheater elements 7 mm of volume for their surface, regulator 0.08 of one piston's area wide open and a tenth of
 * that with the first valve, each cylinder's open cock 20 mm of bore. Left out: slack, water in the cylinders, the position of
 * the cranks.
 */
public final class ShortMove {

    static final double REGULATOR_OF_PISTON = 0.08;
    static final double FIRST_VALVE_OF_REGULATOR = 0.1;
    static final double CHEST_OF_CYLINDERS = 1;
    static final double ELEMENT_M = 0.007;
    static final double COCK_M2 = Math.PI / 4 * 0.020 * 0.020;

    private static final double STEP_S = 0.002;
    private static final double LONGEST_S = 300;
    private static final double ATMOSPHERE_PA = SaturatedSteam.ATMOSPHERE_PA;

    private final LocomotiveParameters parameters;
    private final double boilerPa;
    private final double boilerVolume;
    private final double chestM3;
    private final double sweptM2;

    private ShortMove(LocomotiveParameters parameters, double pressurePa) {
        this.parameters = parameters;
        boilerPa = pressurePa + ATMOSPHERE_PA;
        boilerVolume = SaturatedSteam.table().steamVolume(boilerPa);
        Cylinders cylinders = parameters.cylinders();
        double pistonsM2 = cylinders.count() * pistonM2(cylinders);
        chestM3 = CHEST_OF_CYLINDERS * pistonsM2 * cylinders.strokeM()
                + ELEMENT_M * parameters.boiler().superheaterM2();
        // Each piston sweeps its stroke twice in a turn.
        sweptM2 = 2 * pistonsM2 * cylinders.strokeM() / (Math.PI * cylinders.wheelDiameterM());
    }

    private static double pistonM2(Cylinders cylinders) {
        return Math.PI / 4 * cylinders.boreM() * cylinders.boreM();
    }

    /**
     * What is moved.
     *
     * @param inertiaKg turning wheels included
     * @param startingN resistance at rest
     * @param rollingN resistance while moving
     */
    public record Load(double inertiaKg, double startingN, double rollingN) {

        public Load {
            Check.positive("inertiaKg", inertiaKg);
            Check.notNegative("startingN", startingN);
            Check.notNegative("rollingN", rollingN);
        }
    }

    /**
     * What is done with the handles.
     *
     * @param openS how long the regulator stays open, from 0 to 60
     * @param regulator opening as in {@link Controls}
     * @param cocksOpen whether the cylinder cocks are open throughout
     */
    public record Burst(double openS, double regulator, boolean cocksOpen) {

        public Burst {
            Check.within("openS", openS, 0, 60);
            Check.within("regulator", regulator, 0, 1);
        }
    }

    /**
     * What comes of it, without any brake.
     *
     * @param movedM from stand to stand; 0 if the engine does not start
     * @param ranOnM part of it after the regulator was shut
     * @param topMps greatest speed
     * @param lagS from opening the regulator to the first movement; 0 if there is none
     * @param steamKg let through the regulator
     */
    public record Move(double movedM, double ranOnM, double topMps, double lagS, double steamKg) {}

    /**
     * Returns the movement.
     *
     * @param pressurePa boiler pressure above the atmosphere
     */
    public static Move of(LocomotiveParameters parameters, double pressurePa, Load load, Burst burst) {
        Check.within("pressurePa", pressurePa, 0, SaturatedSteam.PRESSURE_GREATEST_PA - ATMOSPHERE_PA);
        return new ShortMove(parameters, pressurePa).move(load, burst);
    }

    /**
     * Returns over which way the pull follows the handle when the regulator is shut under way, m: after that way the chest has given
     * all but 1/e of its steam to the cylinders. It does not depend on speed, for what the pistons sweep does not.
     *
     * @param cutoff above 0, at most 0.9
     */
    public static double lagM(LocomotiveParameters parameters, double cutoff) {
        Check.within("cutoff", cutoff, 0.02, 0.9);
        ShortMove move = new ShortMove(parameters, parameters.boiler().pressureMaxPa());
        return move.chestM3 / (move.sweptM2 * cutoff);
    }

    private Move move(Load load, Burst burst) {
        double chestPa = ATMOSPHERE_PA;
        double speed = 0;
        double moved = 0;
        double atShut = 0;
        double top = 0;
        double lag = 0;
        double steam = 0;
        double regulatorM2 = regulatorM2(burst.regulator());
        double cocksM2 = burst.cocksOpen() ? parameters.cylinders().count() * COCK_M2 : 0;
        for (double t = 0; t < LONGEST_S; t += STEP_S) {
            boolean open = t < burst.openS();
            double in = open ? regulatorM2 * Orifice.flux(boilerPa, boilerVolume, chestPa) : 0;
            double density = chestPa / (boilerVolume * boilerPa);
            double used = sweptM2 * speed * parameters.valveGear().cutoffFull() * density;
            double lost = cocksM2 * Orifice.flux(chestPa, 1 / density, ATMOSPHERE_PA);
            double spare = (density - ATMOSPHERE_PA / (boilerVolume * boilerPa)) * chestM3 + in * STEP_S;
            double out = Math.min((used + lost) * STEP_S, Math.max(0, spare));
            chestPa += (in * STEP_S - out) / chestM3 * boilerVolume * boilerPa;
            chestPa = Math.max(ATMOSPHERE_PA, Math.min(boilerPa, chestPa));
            steam += in * STEP_S;
            double pullN = SteamEngine.SHARE_MAX
                    * (chestPa - ATMOSPHERE_PA)
                    * parameters.cylinders().forcePerPressureM2();
            double against = speed > 0 ? load.rollingN() : load.startingN();
            if (speed > 0 || pullN > against) {
                lag = moved == 0 && speed == 0 ? t : lag;
                speed = Math.max(0, speed + (pullN - against) / load.inertiaKg() * STEP_S);
                moved += speed * STEP_S;
            }
            top = Math.max(top, speed);
            atShut = open ? moved : atShut;
            if (!open && speed <= 0) {
                break;
            }
        }
        return new Move(moved, moved - atShut, top, lag, steam);
    }

    private double regulatorM2(double opening) {
        double wideM2 = REGULATOR_OF_PISTON * pistonM2(parameters.cylinders());
        double firstM2 = FIRST_VALVE_OF_REGULATOR * wideM2;
        return opening <= Controls.FIRST_VALVE
                ? firstM2 * opening / Controls.FIRST_VALVE
                : firstM2 + (wideM2 - firstM2) * (opening - Controls.FIRST_VALVE) / (1 - Controls.FIRST_VALVE);
    }
}
