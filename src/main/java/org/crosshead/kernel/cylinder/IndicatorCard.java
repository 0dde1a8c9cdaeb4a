package org.crosshead.kernel.cylinder;

import java.util.List;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Ends;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Pace;
import org.crosshead.kernel.cylinder.IndicatorDiagram.Point;
import org.crosshead.kernel.steam.SaturatedSteam;
import org.crosshead.kernel.steam.Superheat;
import org.crosshead.kernel.units.Check;

/**
 * The diagram of one end of a cylinder, to be drawn, against the back pressure of the steam that it uses itself. The same physics
 * as {@link CylinderTable}, without its nodes.
 *
 * @param points over one turn from the beginning of the stroke, pressures absolute
 * @param backPa behind the exhaust, absolute
 * @param missingShare steam condensed as it came in, as a share of that in the diagram
 */
public record IndicatorCard(Diagram diagram, List<Point> points, double backPa, double missingShare) {

    /** Rounds in which back pressure and steam settle: the one falls as the other rises, and three leave a thousandth. */
    private static final int ROUNDS = 6;

    public IndicatorCard {
        points = List.copyOf(points);
    }

    /**
     * How the cylinder is worked.
     *
     * @param chestPa above the atmosphere, from 0.1 to 24 bar
     * @param cutoff from 0.05 to 0.9
     * @param pistonMps mean speed of the piston, from 0
     */
    public record Working(double chestPa, double cutoff, double pistonMps) {

        public Working {
            Check.within("chestPa", chestPa, 1e4, 24e5);
            Check.within("cutoff", cutoff, 0.05, 0.9);
            Check.notNegative("pistonMps", pistonMps);
        }
    }

    public static IndicatorCard of(CylinderTable.Bore bore, CylinderForm form, Superheat superheat, Working working) {
        ValveEvents events = ValveEvents.at(form.valve(), working.cutoff());
        double chestPa = working.chestPa() + SaturatedSteam.ATMOSPHERE_PA;
        Pace pace = new Pace(bore.strokeM() / bore.boreM(), working.pistonMps() / bore.boreM());
        Ends ends = CylinderTable.ends(superheat, chestPa, SaturatedSteam.ATMOSPHERE_PA);
        for (int i = 0; i < ROUNDS; i++) {
            Diagram diagram = IndicatorDiagram.of(form, events, ends, pace);
            double blastPa = CylinderTable.blastPa(form, diagram.steamKgPerM3(), working.pistonMps());
            double backPa = (ends.backPa() + SaturatedSteam.ATMOSPHERE_PA + blastPa) / 2;
            ends = CylinderTable.ends(superheat, chestPa, Math.min(chestPa, backPa));
        }
        return new IndicatorCard(
                IndicatorDiagram.of(form, events, ends, pace),
                IndicatorDiagram.trace(form, events, ends, pace),
                ends.backPa(),
                MissingQuantity.share(working.cutoff(), working.pistonMps(), superheat.kelvins()));
    }
}
