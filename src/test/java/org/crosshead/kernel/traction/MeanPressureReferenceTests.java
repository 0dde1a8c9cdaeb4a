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

    /** Closed form r (1 + ln 1/r): no clearance, no back pressure; here with the clearance taken out again. */
    @ParameterizedTest
    @CsvSource({".10, .3303", ".20, .5219", ".25, .5966", ".333, .6995", ".50, .8466", ".667, .9370", ".75, .9658"})
    void idealExpansionAgreesWithItsClosedForm(double cutoff, double expected) {
        assertThat(cutoff * (1 + Math.log(1 / cutoff))).isCloseTo(expected, within(5e-4));
        assertThat(MeanPressure.lossFree(cutoff)).isBetween(expected - 0.09, expected + 0.09);
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
