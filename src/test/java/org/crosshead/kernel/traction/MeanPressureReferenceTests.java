package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Mean pressure over cutoff against printed tables. */
class MeanPressureReferenceTests {

    /**
     * G. L. Vose, Handbook of Railroad Construction (1857) p. 309, after D. K. Clark (key VOS, read): mean cylinder pressure by
     * admission at low speed. Two misprinted cells are left out: 80 psi at 40 per cent is empty in the file, 90 psi is not in it.
     */
    static Stream<Arguments> clarkTable() throws IOException {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(MeanPressureReferenceTests.class.getResourceAsStream("mean-pressure-clark.csv")),
                StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords()
                    .stream()
                    .flatMap(MeanPressureReferenceTests::cells);
        }
    }

    private static Stream<Arguments> cells(CSVRecord row) {
        double psi = Double.parseDouble(row.get("psi"));
        return row.toMap().entrySet().stream()
                .filter(cell -> !cell.getKey().equals("psi") && !cell.getValue().isEmpty())
                .map(cell -> Arguments.of(psi, Double.parseDouble(cell.getKey()), Double.parseDouble(cell.getValue())));
    }

    @ParameterizedTest
    @MethodSource("clarkTable")
    void shortTravelAsClarkPrintedIt(double psi, double cutoffPercent, double expectedPsi) {
        assertThat(psi * MeanPressure.clark(cutoffPercent / 100)).isCloseTo(expectedPsi, within(1.5));
    }

    /** Closed form r (1 + ln 1/r) of expansion without clearance (computed). */
    @ParameterizedTest
    @CsvSource({
        ".10, .3303",
        ".20, .5219",
        ".25, .5966",
        ".33333333, .6995",
        ".50, .8466",
        ".66666667, .9370",
        ".75, .9658",
        ".80, .9785"
    })
    void expansionWithoutClearance(double cutoff, double expected) {
        assertThat(MeanPressure.forward(cutoff, 0)).isCloseTo(expected, within(1e-4));
    }

    /**
     * Model with clearance 0.08, 214.7 psi absolute, back pressure 19.7 psi with exhaust closed over the last 0.15 (computed from
     * its closed form): mean effective pressure. The back pressure of that example is taken off here.
     */
    @ParameterizedTest
    @CsvSource({
        ".15, 87.0",
        ".20, 102.6",
        ".25, 116.1",
        ".30, 128.1",
        ".40, 147.9",
        ".50, 163.2",
        ".60, 174.8",
        ".70, 183.3",
        ".75, 186.4"
    })
    void expansionWithClearance(double cutoff, double expectedPsi) {
        double backPsi = 19.7 * (0.85 + 0.23 * Math.log(0.23 / 0.08));
        assertThat(214.7 * MeanPressure.forward(cutoff, 0.08) - backPsi).isCloseTo(expectedPsi, within(0.1));
    }

    @Test
    void longTravelLiesBetweenClarkAndTheDiagramWithoutLosses() {
        for (double cutoff = 0.10; cutoff <= 0.75; cutoff += 0.05) {
            double longTravel = MeanPressure.share(ValveFamily.LONG_TRAVEL, cutoff);
            assertThat(longTravel).isBetween(Math.min(0.85, MeanPressure.clark(cutoff)), 0.85);
            assertThat(longTravel).isLessThanOrEqualTo(MeanPressure.lossFree(cutoff));
        }
        // From memory: 0.50 to 0.60 of chest pressure at 25 per cent.
        assertThat(MeanPressure.share(ValveFamily.LONG_TRAVEL, 0.25)).isBetween(0.49, 0.60);
    }

    /** Common practice: full gear gives the share of the tractive effort formula. */
    @Test
    void fullGearGivesTheShareOfTheFormula() {
        assertThat(MeanPressure.share(ValveFamily.SHORT_TRAVEL, 0.75)).isEqualTo(0.85);
        assertThat(MeanPressure.share(ValveFamily.LONG_TRAVEL, 0.75)).isEqualTo(0.85);
    }
}
