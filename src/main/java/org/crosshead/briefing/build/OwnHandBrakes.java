package org.crosshead.briefing.build;

import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.Policy.PolicyFigure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.standing.HandBrakeTable;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.FormationFigures;

/** The railway's own table of hand brakes, as its policy lays it down, asked for the vehicles of one train. */
final class OwnHandBrakes {

    private static final double PER_CENT = 100;

    private final HandBrakeTable table;
    private final int vehicles;

    /** Returns the table for a train left standing: all its vehicles count. */
    static OwnHandBrakes standing(Workings workings) {
        return new OwnHandBrakes(workings, Policy.HAND_BRAKES, vehicle -> true);
    }

    /** Returns the table for wagons pinned down before a fall: those count that the train's brake does not reach. */
    static OwnHandBrakes pinned(Workings workings) {
        return new OwnHandBrakes(workings, Policy.PINNED_WAGONS, vehicle -> !vehicle.braked());
    }

    private OwnHandBrakes(Workings workings, String purpose, Predicate<FormationFigures.Vehicle> counts) {
        NavigableMap<Integer, Integer> byVehicles = new TreeMap<>();
        NavigableMap<Double, Double> bySlope = new TreeMap<>();
        for (PolicyFigure figure : workings.inputs().policy().values()) {
            if (figure.key().startsWith(purpose + Policy.VEHICLES_TO)) {
                byVehicles.put((int) number(figure.key()), (int) figure.value());
            } else if (figure.key().startsWith(purpose + Policy.SHARE_FROM)) {
                bySlope.put(Units.gradientFromOneIn(number(figure.key())), figure.value() / PER_CENT);
            }
        }
        table = new HandBrakeTable(byVehicles, bySlope);
        FormationFigures.Resolved load = workings.model().consist();
        vehicles =
                load == null ? 0 : (int) load.vehicles().stream().filter(counts).count();
    }

    private static double number(String key) {
        return Double.parseDouble(key.substring(key.lastIndexOf('.') + 1));
    }

    /** Returns the step that takes the railway's number where it is more than what the balance of forces asks for. */
    static Step step(Step balance, int brakes) {
        return new Step(
                StepKind.MARGIN,
                "hand-brakes.rule",
                "max(balance, rule)",
                List.of(
                        new Input("balance", balance.result(), "", "step:" + balance.name()),
                        new Input("rule", brakes, "", "policy:hand-brakes")),
                Math.max(balance.result(), brakes),
                "",
                "policy:hand-brakes");
    }

    /** Returns how many the railway asks for on a slope; nothing where it has no rule for this train. */
    OptionalInt brakes(double slope) {
        return table.brakes(vehicles, slope);
    }

    boolean endsBefore() {
        return table.endsBefore(vehicles);
    }
}
