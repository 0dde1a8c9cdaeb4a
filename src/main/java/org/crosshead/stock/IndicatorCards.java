package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.cylinder.CylinderTable;
import org.crosshead.kernel.cylinder.IndicatorCard;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.traction.LocomotiveParameters;
import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.traction.SteamEngine;
import org.crosshead.kernel.units.Units;

/** What an indicator would draw on a class's cylinders: starting in full gear, on a bank, and at speed. Pressures above the atmosphere. */
public record IndicatorCards(List<Card> cards) {

    private static final double STARTING_MPH = 5;
    private static final double BANK_CUTOFF = 0.35;
    private static final double BANK_SHARE = 0.35;
    private static final double RUNNING_CUTOFF = 0.20;
    private static final double RUNNING_SHARE = 0.75;

    public IndicatorCards {
        cards = List.copyOf(cards);
    }

    /**
     * One diagram, regulator wide open.
     *
     * @param cutoff share of the stroke
     * @param chestShare mean effective pressure as a share of that in the chest
     * @param terminalPsi when the exhaust opens
     * @param steamLb drawn in one stroke of one piston, with what condenses on the walls
     * @param condensedShare of that
     */
    public record Card(
            double cutoff,
            double speedMph,
            double meanPsi,
            double chestShare,
            double terminalPsi,
            double backPsi,
            double steamLb,
            double condensedShare,
            List<Point> points) {

        public Card {
            points = List.copyOf(points);
        }
    }

    /** Place of the piston as a share of the stroke, and the pressure there. */
    public record Point(double strokeShare, double psi) {}

    public static IndicatorCards of(LocomotiveParameters parameters) {
        double most = parameters.speedMaxMps();
        LocomotiveParameters.ValveGear gear = parameters.valveGear();
        List<Card> cards = new ArrayList<>();
        cards.add(card(parameters, gear.cutoffFull(), Math.min(most, Units.mpsFromMph(STARTING_MPH))));
        cards.add(card(parameters, Math.max(gear.cutoffLeast(), BANK_CUTOFF), BANK_SHARE * most));
        cards.add(card(parameters, Math.max(gear.cutoffLeast(), RUNNING_CUTOFF), RUNNING_SHARE * most));
        return new IndicatorCards(cards);
    }

    private static Card card(LocomotiveParameters parameters, double cutoff, double speedMps) {
        Cylinders cylinders = parameters.cylinders();
        double chestPa = parameters.boiler().pressureMaxPa();
        double pistonMps = cylinders.pistonSpeedMps(speedMps);
        Superheat superheat = SteamEngine.superheat(parameters.boiler());
        IndicatorCard drawn = IndicatorCard.of(
                new CylinderTable.Bore(cylinders.boreM(), cylinders.strokeM()),
                parameters.valveGear().form(),
                superheat,
                new IndicatorCard.Working(chestPa, cutoff, pistonMps));
        double sweptM3 = Math.PI / 4 * cylinders.boreM() * cylinders.boreM() * cylinders.strokeM();
        double missing = drawn.missingShare();
        return new Card(
                cutoff,
                Units.mphFromMps(speedMps),
                Units.psiFromPa(drawn.diagram().meanPressurePa()),
                drawn.diagram().meanPressurePa() / chestPa,
                gauge(drawn.diagram().terminalPa()),
                gauge(drawn.backPa()),
                Units.lbFromKg(drawn.diagram().steamKgPerM3() * sweptM3 * (1 + missing)),
                missing / (1 + missing),
                drawn.points().stream()
                        .map(point -> new Point(point.strokeShare(), gauge(point.pressurePa())))
                        .toList());
    }

    private static double gauge(double absolutePa) {
        return Units.psiFromPa(absolutePa - SaturatedSteam.ATMOSPHERE_PA);
    }
}
