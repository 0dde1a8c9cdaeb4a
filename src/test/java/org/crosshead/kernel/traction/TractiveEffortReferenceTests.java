package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.crosshead.kernel.ReferenceRow.number;

import org.crosshead.kernel.traction.LocomotiveParameters.Cylinders;
import org.crosshead.kernel.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Checks {@link TractiveEffort} and d2 s/D against figures stated for real engines. */
class TractiveEffortReferenceTests {

    /** The paper rounds and truncates; two rows show that it used other tyres than it prints. */
    private static final double WHITLEY_PERCENT = 1.3;

    private static Cylinders cylinders(int count, ArgumentsAccessor row, int at) {
        return new Cylinders(
                count,
                Units.metresFromInches(number(row, at)),
                Units.metresFromInches(number(row, at + 1)),
                Units.metresFromInches(number(row, at + 2)));
    }

    /** The stated figures are this same formula rounded to 5 or 10 lbf: the tolerance is that rounding. */
    @ParameterizedTest
    @CsvFileSource(resources = "tractive-effort.csv", useHeadersInDisplayName = true)
    void agreesWithStatedEffort(ArgumentsAccessor row) {
        double forceN = TractiveEffort.ofN(
                cylinders((int) number(row, 4), row, 5), Units.paFromPsi(number(row, 3)), number(row, 8));
        assertThat(Units.lbfFromNewtons(forceN)).isCloseTo(number(row, 9), withinPercentage(number(row, 10)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "force-per-pound.csv", useHeadersInDisplayName = true)
    void agreesWithWhitley(ArgumentsAccessor row) {
        double perPoundLb =
                Units.lbfFromNewtons(Units.paFromPsi(1) * cylinders(2, row, 2).forcePerPressureM2());
        assertThat(perPoundLb).isCloseTo(number(row, 5), withinPercentage(WHITLEY_PERCENT));
    }
}
