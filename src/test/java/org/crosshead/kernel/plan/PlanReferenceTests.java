package org.crosshead.kernel.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.resistance.RunningResistance;
import org.junit.jupiter.api.Test;

/**
 * The bare optimum against closed forms of running with least energy, for an engine whose coal goes with its work. With running
 * resistance r(v), e the coal for each joule and L the price of time, Pontryagin's principle gives on a level road
 *
 * <ul>
 *   <li>drive hard, hold a speed V, coast, brake, in this order;
 *   <li>V where e r'(V) V^2 = L, which is the least of (L + e r(V) V) / V;
 *   <li>on a long run the brake begins at U = V^2 r'(V) / (r(V) + V r'(V)).
 * </ul>
 *
 * The places are compared from a kilometre before the stop on: nearer, the cells of 8 m and more in which a brake begins show.
 * Textbook results (optimal train control, Howlett and Pudney 1995, from memory); both follow in a few lines from the Hamiltonian
 * e u v + L + p (u - r(v)) with p = e v along the part where the speed is held.
 */
class PlanReferenceTests {

    private static final double STEAM_KG_PER_J = 3e-6;
    private static final double COAL_KG_PER_KG = 0.13;
    private static final double PRESSURE_PA = 10e5;
    private static final BareOptimum.Polish FINE = new BareOptimum.Polish(new SpeedProgramme.Fineness(1, 0.03, 40), 6);

    private static BareOptimum level(double lengthM, double bookedS) {
        LinearEngine engine = new LinearEngine(60_000, STEAM_KG_PER_J, COAL_KG_PER_KG);
        RunRequest request =
                PlanTrips.trip(engine, new double[] {0, lengthM}, new double[] {0}, 8, OptionalDouble.of(bookedS));
        return BareOptimum.of(request, PRESSURE_PA, FINE).orElseThrow();
    }

    private static double priceOfTime(BareOptimum optimum) {
        return optimum.prices.timeKgPerS[0];
    }

    @Test
    void levelRoadIsDrivenHeldCoastedBraked() {
        BareOptimum optimum = level(60_600, 3_600);
        SpeedPath path = optimum.paths.get(0);
        StringBuilder phases = new StringBuilder();
        for (int i = 0; i < path.cells(); i++) {
            double pullN = pullN(optimum, path, i);
            double most = optimum.road.table[i].forceMaxN(0, 10);
            char phase = pullN > 0.9 * most ? 'D' : pullN > 500 ? 'H' : pullN > -500 ? 'C' : 'B';
            if (phases.isEmpty() || phases.charAt(phases.length() - 1) != phase) {
                phases.append(phase);
            }
        }
        assertThat(phases.toString()).matches("DHC(BC)*B");
    }

    private static double pullN(BareOptimum optimum, SpeedPath path, int i) {
        double lengthM = optimum.road.nodeM[i + 1] - optimum.road.nodeM[i];
        double meanMps = lengthM / path.timeS()[i];
        return optimum.road.inertiaKg[i] * (path.half()[i + 1] - path.half()[i]) / lengthM
                + optimum.road.resistanceN(i, meanMps)
                + optimum.road.workJ[i] / lengthM;
    }

    @Test
    void speedHeldIsThatOfTheClosedForm() {
        BareOptimum optimum = level(60_600, 3_600);
        RunningResistance resistance = resistance(optimum);
        double wanted = heldMps(resistance, priceOfTime(optimum));
        SpeedPath path = optimum.paths.get(0);
        double meanMps = IntStream.range(path.cells() / 4, path.cells() / 2)
                .mapToDouble(i -> Math.sqrt(2 * path.half()[i]))
                .average()
                .orElseThrow();
        assertThat(meanMps).isCloseTo(wanted, Percentage.withPercentage(0.5));
    }

    /**
     * A rolling stop: steam is shut where the train coasts from V down to U just where the brake must take it. From the place of the brake's
     * own curve where U is allowed, coasting is followed backwards; speeds on the way and the place of shutting agree.
     */
    @Test
    void steamIsShutWhereTheClosedFormSays() {
        BareOptimum optimum = level(60_600, 3_600);
        RunningResistance resistance = resistance(optimum);
        double held = heldMps(resistance, priceOfTime(optimum));
        double slope = resistance.linearNPerMps() + 2 * held * resistance.quadraticNPerMps2();
        double brakeFromMps = held * held * slope / (resistance.forceN(held) + held * slope);
        SpeedPath path = optimum.paths.get(0);
        int cell = path.cells() - 1;
        while (optimum.road.allowed[cell] < brakeFromMps * brakeFromMps) {
            cell--;
        }
        double share = (brakeFromMps * brakeFromMps - optimum.road.allowed[cell])
                / (optimum.road.allowed[cell + 1] - optimum.road.allowed[cell]);
        double atM = optimum.road.nodeM[cell] + share * (optimum.road.nodeM[cell + 1] - optimum.road.nodeM[cell]);
        double squared = brakeFromMps * brakeFromMps;
        double endM = optimum.road.nodeM[path.cells()];
        int compared = 0;
        for (double stepM = 0.5; squared < held * held; atM -= stepM) {
            squared += 2 * stepM * resistance.forceN(Math.sqrt(squared)) / optimum.road.inertiaKg[0];
            double beforeM = endM - atM;
            if (Math.abs(beforeM % 500 - 250) < stepM / 2 && beforeM > 1_000 && squared < 0.95 * held * held) {
                assertThat(speed(optimum, path, atM)).isCloseTo(Math.sqrt(squared), Percentage.withPercentage(0.5));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(2);
        assertThat(speed(optimum, path, atM - 300)).isCloseTo(held, Percentage.withPercentage(0.5));
    }

    private static double speed(BareOptimum optimum, SpeedPath path, double atM) {
        int i = 0;
        while (optimum.road.nodeM[i + 1] <= atM) {
            i++;
        }
        double share = (atM - optimum.road.nodeM[i]) / (optimum.road.nodeM[i + 1] - optimum.road.nodeM[i]);
        return Math.sqrt(2 * (path.half()[i] + share * (path.half()[i + 1] - path.half()[i])));
    }

    /** Holding on a constant climb: the same closed form, for the gradient adds the same to every speed. */
    @Test
    void speedHeldOnAConstantClimbIsTheSame() {
        LinearEngine engine = new LinearEngine(90_000, STEAM_KG_PER_J, COAL_KG_PER_KG);
        RunRequest request =
                PlanTrips.trip(engine, new double[] {0, 50_000}, new double[] {1.0 / 300}, 8, OptionalDouble.of(3_300));
        BareOptimum optimum = BareOptimum.of(request, PRESSURE_PA, FINE).orElseThrow();
        SpeedPath path = optimum.paths.get(0);
        double meanMps = IntStream.range(path.cells() / 4, path.cells() / 2)
                .mapToDouble(i -> Math.sqrt(2 * path.half()[i]))
                .average()
                .orElseThrow();
        assertThat(meanMps)
                .isCloseTo(heldMps(resistance(optimum), priceOfTime(optimum)), Percentage.withPercentage(0.5));
    }

    private static RunningResistance resistance(BareOptimum optimum) {
        return new RunningResistance(optimum.road.constantN[0], optimum.road.linearN[0], optimum.road.quadraticN[0], 0);
    }

    /** Solves e r'(V) V^2 = L by halving. */
    private static double heldMps(RunningResistance resistance, double priceKgPerS) {
        double e = STEAM_KG_PER_J * COAL_KG_PER_KG;
        double low = 1;
        double high = 60;
        for (int i = 0; i < 60; i++) {
            double v = (low + high) / 2;
            double slope = resistance.linearNPerMps() + 2 * v * resistance.quadraticNPerMps2();
            if (e * slope * v * v < priceKgPerS) {
                low = v;
            } else {
                high = v;
            }
        }
        return (low + high) / 2;
    }

    /** Where no fire is needed between, a taut string through a channel is the straight line; round a corner it bends at the corner. */
    @Test
    void tautStringBendsOnlyAtItsBounds() {
        double[] at = {0, 1, 2, 3, 4};
        double[] straight = TautString.slopes(at, new double[] {0, -9, -9, -9, 4}, new double[] {0, 9, 9, 9, 4});
        assertThat(straight).containsExactly(new double[] {1, 1, 1, 1}, within(1e-12));
        double[] bent = TautString.slopes(at, new double[] {0, -9, 3, -9, 4}, new double[] {0, 9, 9, 9, 4});
        assertThat(bent).containsExactly(new double[] {1.5, 1.5, 0.5, 0.5}, within(1e-12));
        double[] under = TautString.slopes(at, new double[] {0, -9, -9, -9, 4}, new double[] {0, 9, 9, 1, 4});
        assertThat(under).containsExactly(new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3, 3}, within(1e-12));
    }
}
