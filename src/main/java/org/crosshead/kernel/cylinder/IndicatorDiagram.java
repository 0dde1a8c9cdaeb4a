package org.crosshead.kernel.cylinder;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.steam.Orifice;
import org.crosshead.kernel.units.Check;

/**
 * The diagram that an indicator would draw of one end of a cylinder, turn after turn at one speed: steam comes in through the
 * opening port, below chest pressure as far as the opening is small for the speed of the piston, expands, goes out against the
 * blast and is shut in again; the events follow from the valve's motion. The crank is turned in small angles. In each the
 * steam in the cylinder closes in on the pressure beyond the open port as the flow through it allows.
 *
 * <p>Steam follows {@code p (V/m)^n}. For saturated steam n is 1, the hyperbola, which stands for condensing and drying on the
 * walls as well; for superheated steam {@value #EXPONENT_SUPERHEATED}, a small step from it towards dry expansion (an estimate;
 * cards of superheated engines lie between 1 and 1.3, from memory). What condenses as the steam comes in (the missing
 * quantity) is not in the diagram: {@link MissingQuantity}. Left out: angularity of the rods, leakage, and what the walls give
 * back.
 */
public final class IndicatorDiagram {

    static final double EXPONENT_SATURATED = 1.0;
    static final double EXPONENT_SUPERHEATED = 1.05;

    private static final double LEAST_MPS = 0.01;

    private final CylinderForm form;
    private final CrankSteps steps;
    private final Ends ends;
    /** Constant of the steam's law, {@code p (V/m)^n}. */
    private final double scale;

    private final double turnS;
    private final double strokeVolume;

    private double volume;
    private double mass;
    private double pressurePa;
    private double work;
    private double drawn;
    private double terminalPa;
    private boolean filling;

    /**
     * Steam as it comes and where it goes. Pressures are absolute.
     *
     * @param chestPa in the steam chest
     * @param volumeM3PerKg of the steam there
     * @param exponent of its expansion, from 1 to 1.3
     * @param backPa behind the exhaust
     */
    public record Ends(double chestPa, double volumeM3PerKg, double exponent, double backPa) {

        public Ends {
            Check.within("exponent", exponent, 1, 1.3);
            Check.positive("volumeM3PerKg", volumeM3PerKg);
            Check.positive("backPa", backPa);
            Check.that(chestPa >= backPa, "chestPa must not be below backPa");
        }
    }

    private IndicatorDiagram(CylinderForm form, CrankSteps steps, Ends ends, Pace pace) {
        this.form = form;
        this.steps = steps;
        this.ends = ends;
        scale = ends.chestPa() * power(ends.volumeM3PerKg(), ends.exponent());
        turnS = 2 * pace.strokeShare() / Math.max(LEAST_MPS, pace.boresPerS());
        strokeVolume = Math.PI / 4 * pace.strokeShare();
        // Begins with the cylinder open to the exhaust at the end of its stroke; half a turn later this is forgotten.
        volume = volumeAt(steps.half());
        pressurePa = ends.backPa();
        mass = massAt(pressurePa, volume);
    }

    /**
     * How fast the piston goes.
     *
     * @param strokeShare stroke as a share of the bore
     * @param boresPerS mean speed of the piston, bores in a second
     */
    public record Pace(double strokeShare, double boresPerS) {}

    /** Returns what one end of a cylinder does in a turn. */
    public static Diagram of(CylinderForm form, ValveEvents events, Ends ends, Pace pace) {
        return of(form, new CrankSteps(events), ends, pace);
    }

    static Diagram of(CylinderForm form, CrankSteps steps, Ends ends, Pace pace) {
        IndicatorDiagram diagram = new IndicatorDiagram(form, steps, ends, pace);
        diagram.settle();
        return diagram.turn(new double[0]);
    }

    /**
     * A point of a diagram to draw.
     *
     * @param strokeShare place of the piston, from 0 at the beginning of its stroke to 1
     * @param pressurePa absolute
     */
    public record Point(double strokeShare, double pressurePa) {}

    /** Returns the diagram itself, over one turn from the beginning of the stroke. */
    public static List<Point> trace(CylinderForm form, ValveEvents events, Ends ends, Pace pace) {
        CrankSteps steps = new CrankSteps(events);
        IndicatorDiagram diagram = new IndicatorDiagram(form, steps, ends, pace);
        double[] pressures = new double[steps.count()];
        diagram.settle();
        diagram.turn(pressures);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < pressures.length; i++) {
            points.add(new Point(steps.swept[i], pressures[i]));
        }
        return List.copyOf(points);
    }

    private void settle() {
        for (int i = steps.half(); i < steps.count(); i++) {
            step(i);
        }
        work = 0;
        drawn = 0;
    }

    private Diagram turn(double[] pressures) {
        for (int i = 0; i < steps.count(); i++) {
            if (pressures.length > 0) {
                pressures[i] = pressurePa;
            }
            step(i);
        }
        return new Diagram(work / strokeVolume, Math.max(0, drawn / strokeVolume), terminalPa);
    }

    private double volumeAt(int step) {
        return strokeVolume * (form.clearance() + steps.swept[step]);
    }

    private void step(int step) {
        double next = volumeAt(step + 1);
        // Area times time.
        double steam = form.flowShare() * steps.steamArea[step] * steps.turnShare[step] * turnS;
        double exhaust = form.flowShare() * steps.exhaustArea[step] * steps.turnShare[step] * turnS;
        if (steam > 0) {
            double before = mass;
            mass = closedIn(ends.chestPa(), steam, next);
            drawn += mass - before;
            filling = true;
        } else if (exhaust > 0) {
            if (filling) {
                terminalPa = pressurePa;
                filling = false;
            }
            mass = closedIn(ends.backPa(), exhaust, next);
        }
        double after = scale * power(mass / next, ends.exponent());
        work += (pressurePa + after) / 2 * (next - volume);
        pressurePa = after;
        volume = next;
    }

    /** Returns the mass after a step in which a port is open to a pressure: it closes in on what would even the two out. */
    private double closedIn(double beyondPa, double areaTime, double nextVolume) {
        double even = massAt(beyondPa, nextVolume);
        double gap = even - mass;
        double insidePa = scale * power(mass / nextVolume, ends.exponent());
        double flux = gap > 0
                ? Orifice.flux(beyondPa, nextVolume / even, insidePa)
                : Orifice.flux(insidePa, nextVolume / mass, beyondPa);
        return gap == 0 ? mass : even - gap * Math.exp(-flux * areaTime / Math.abs(gap));
    }

    private double massAt(double atPa, double inVolume) {
        return inVolume * power(atPa / scale, 1 / ends.exponent());
    }

    private static double power(double base, double exponent) {
        return exponent == 1 ? base : Math.pow(base, exponent);
    }
}
