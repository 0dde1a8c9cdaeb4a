package org.crosshead.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.crosshead.route.MeasureUnit.CHAINS;
import static org.crosshead.route.MeasureUnit.KILOMETRES;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Checks that positions are read and written as crews know them, and that what could mean two things is not taken. */
class MeasuresTests {

    @ParameterizedTest
    @CsvSource({
        "12m 34ch, 994",
        "12m34ch, 994",
        "12 m 34 ch, 994",
        " 12M  34CH , 994",
        "12m 0ch, 960",
        "12m, 960",
        "34ch, 34",
        "240ch, 240",
        "12.34, 994",
        "0.05, 5",
        "12.00, 960",
        "12m 34.5ch, 994.5"
    })
    void readsMilesAndChains(String text, double chains) {
        assertThat(Measures.parse(text, CHAINS)).contains(chains);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "12",
                "12.3",
                "12.345",
                "12.80",
                "12m 80ch",
                "-1m",
                "12m -3ch",
                "12,34",
                "12 km",
                "m",
                "ch",
                "mile 12",
                "12m 34",
                "1e3ch",
                "NaN",
                "12m 34ch 5"
            })
    void takesNothingElseForMilesAndChains(String text) {
        assertThat(Measures.parse(text, CHAINS)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12.345, 12.345", "12.345 km, 12.345", "12km, 12", "0, 0", "7.5, 7.5"})
    void readsKilometres(String text, double km) {
        assertThat(Measures.parse(text, KILOMETRES)).contains(km);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12m 34ch", "-1", "1e3", "12,345", "km", "Infinity"})
    void takesNothingElseForKilometres(String text) {
        assertThat(Measures.parse(text, KILOMETRES)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "994, CHAINS, 12m 34ch",
        "0, CHAINS, 0m 0ch",
        "79.6, CHAINS, 1m 0ch",
        "994.4, CHAINS, 12m 34ch",
        "12.3454, KILOMETRES, 12.345 km",
        "7, KILOMETRES, 7.000 km"
    })
    void writesToTheNearestChainOrMetre(double measure, MeasureUnit unit, String text) {
        assertThat(Measures.format(measure, unit)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "994.5, CHAINS, 12m 34.5ch",
        "79.99999999, CHAINS, 1m 0ch",
        "994.333333, CHAINS, 12m 34.333333ch",
        "12.3454, KILOMETRES, 12.3454 km"
    })
    void writesExactlyWhatItReadsBack(double measure, MeasureUnit unit, String text) {
        assertThat(Measures.exact(measure, unit)).isEqualTo(text);
        assertThat(Measures.parse(text, unit).orElseThrow())
                .isCloseTo(measure, org.assertj.core.api.Assertions.within(1e-6));
    }
}
