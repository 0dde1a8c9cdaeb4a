package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.crosshead.kernel.ReferenceRow.number;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Checks {@link LoadOnGradient} against printed loads. */
class LoadOnGradientReferenceTests {

    /** The three constants, worked out of it, that repeat the table of 1848 [PRR-1848]: this checks the routine, not nature. */
    private static final LoadOnGradient PENNSYLVANIA_1848 = new LoadOnGradient(
            Units.newtonsFromLbf(5_751), Units.newtonsPerKgFromLbPerLongTon(8.482), Units.kgFromLongTons(29.97));

    /** The table prints tenths of a ton. */
    @ParameterizedTest
    @CsvFileSource(resources = "prr-1848-gradient-load.csv", useHeadersInDisplayName = true)
    void repeatsTheTableOf1848(double feetPerMile, String source, double grossTons) {
        double loadKg = PENNSYLVANIA_1848.loadKg(Units.gradientFromFeetPerMile(feetPerMile));
        assertThat(Units.longTonsFromKg(loadKg)).as(source).isCloseTo(grossTons, within(0.1));
    }

    /** Recovered rule: pull 0.184 of the weight on the drivers, 8 lb a ton. Loads are rounded to 5 tons, hence 2 per cent. */
    @ParameterizedTest
    @CsvFileSource(resources = "baldwin-tank-loads.csv", useHeadersInDisplayName = true)
    void repeatsBaldwinsTankEngines(ArgumentsAccessor row) {
        LoadOnGradient engine = new LoadOnGradient(
                Units.newtonsFromLbf(0.184 * number(row, 3)),
                Units.newtonsPerKgFromLbPerLongTon(8),
                Units.kgFromLb(number(row, 2)));
        double loadKg = engine.loadKg(Units.gradientFromFeetPerMile(number(row, 4)));
        assertThat(Units.longTonsFromKg(loadKg)).isCloseTo(number(row, 5), withinPercentage(2));
    }

    /** Tolerances: the figures printed; Randolph rounds his forces to hundredths of a ton. */
    @ParameterizedTest
    @CsvFileSource(resources = "short-ton-loads.csv", useHeadersInDisplayName = true)
    void repeatsPublishedProblems(ArgumentsAccessor row) {
        double shortTonKg = Units.kgFromLb(2_000);
        LoadOnGradient engine = new LoadOnGradient(
                Units.newtonsFromLbf(number(row, 3)),
                Units.newtonsFromLbf(number(row, 4)) / shortTonKg,
                number(row, 6) * shortTonKg);
        assertThat(engine.loadKg(number(row, 5)) / shortTonKg)
                .isCloseTo(number(row, 7), withinPercentage(number(row, 8)));
    }
}
