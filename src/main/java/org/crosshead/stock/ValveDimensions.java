package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.kernel.cylinder.CylinderForm;
import org.crosshead.kernel.cylinder.ValveProportions;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.figure.KnownFigures;

/**
 * The valves, ports and blast of a class as its drawings give them. What is not known is taken from the example of its family
 * of valve gear, in proportion to the bore.
 */
final class ValveDimensions {

    /** Share of the lap that the lead may be; with more the valve would hardly close. */
    private static final double LEAD_OF_LAP = 0.6;

    private static final double LAP_OF_BORE_LEAST = 0.02;
    private static final double LAP_OF_BORE_MOST = 0.15;
    private static final double PORT_WIDTH_LEAST = 0.02;
    private static final double PORT_WIDTH_MOST = 0.3;
    private static final double PORT_LENGTH_LEAST = 0.3;
    private static final double PORT_LENGTH_MOST = 3;
    private static final double BLAST_LEAST = 0.005;
    private static final double BLAST_MOST = 0.3;

    private final ValveFamily family;
    private final KnownFigures known;

    private ValveDimensions(ValveFamily family, KnownFigures known) {
        this.family = family;
        this.known = known;
    }

    /** Returns the form that a diagram is drawn from; the family's where the bore is not known. */
    static CylinderForm form(ValveFamily family, KnownFigures known) {
        return new ValveDimensions(family, known).form();
    }

    /** Returns what cannot be together. */
    static List<StockProblem> problems(ValveFamily family, KnownFigures known) {
        return known.si(ClassFigure.CYLINDER_BORE).isEmpty()
                ? List.of()
                : new ValveDimensions(family, known).problems();
    }

    private CylinderForm form() {
        CylinderForm example = family.form();
        ValveProportions valve = example.valve();
        return new CylinderForm(
                new ValveProportions(
                        ofBore(ClassFigure.STEAM_LAP).orElse(valve.lap()),
                        ofBore(ClassFigure.VALVE_LEAD).orElse(valve.lead()),
                        valve.exhaustLap(),
                        ofBore(ClassFigure.PORT_LENGTH).orElse(valve.portLength()),
                        ofBore(ClassFigure.PORT_WIDTH).orElse(valve.portWidth())),
                known.si(ClassFigure.CYLINDER_CLEARANCE).orElse(example.clearance()),
                example.flowShare(),
                blastShare().orElse(example.blastShare()));
    }

    private Optional<Double> ofBore(ClassFigure figure) {
        return known.si(ClassFigure.CYLINDER_BORE)
                .flatMap(bore -> known.si(figure).map(size -> size / bore));
    }

    /** The area of the orifice as a share of that of all pistons. */
    private Optional<Double> blastShare() {
        return known.si(ClassFigure.CYLINDER_COUNT)
                .flatMap(count -> ofBore(ClassFigure.BLAST_ORIFICE).map(size -> size * size / count));
    }

    private List<StockProblem> problems() {
        List<StockProblem> problems = new ArrayList<>();
        double lap = ofBore(ClassFigure.STEAM_LAP).orElse(family.form().valve().lap());
        within(ClassFigure.STEAM_LAP, LAP_OF_BORE_LEAST, LAP_OF_BORE_MOST, "lap-of-bore")
                .ifPresent(problems::add);
        within(ClassFigure.VALVE_LEAD, 0, LEAD_OF_LAP * lap, "lead-of-lap").ifPresent(problems::add);
        if (known.si(ClassFigure.VALVE_LEAD).isEmpty() && family.form().valve().lead() > LEAD_OF_LAP * lap) {
            problems.add(refused("figures." + ClassFigure.VALVE_LEAD.key(), "lead-wanted"));
        }
        within(ClassFigure.PORT_WIDTH, PORT_WIDTH_LEAST, PORT_WIDTH_MOST, "port-width-of-bore")
                .ifPresent(problems::add);
        within(ClassFigure.PORT_LENGTH, PORT_LENGTH_LEAST, PORT_LENGTH_MOST, "port-length-of-bore")
                .ifPresent(problems::add);
        ofBore(ClassFigure.VALVE_TRAVEL)
                .filter(travel -> lap >= travel / 2)
                .ifPresent(travel ->
                        problems.add(refused("figures." + ClassFigure.VALVE_TRAVEL.key(), "lap-over-half-travel")));
        blastShare()
                .filter(share -> share < BLAST_LEAST || share > BLAST_MOST)
                .ifPresent(share ->
                        problems.add(refused("figures." + ClassFigure.BLAST_ORIFICE.key(), "blast-of-pistons")));
        return problems;
    }

    private Optional<StockProblem> within(ClassFigure figure, double least, double most, String code) {
        return ofBore(figure)
                .filter(share -> share < least || share > most)
                .map(share -> refused("figures." + figure.key(), code));
    }
}
