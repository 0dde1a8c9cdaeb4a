package org.crosshead.kernel.traction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Adhesion against published coefficients. */
class AdhesionReferenceTests {

    /** Curtius and Kniffler 1944, dry rail (form from memory; only a quotation was seen). */
    @ParameterizedTest
    @CsvSource({"0, .3315", "10, .2999", "20, .2782", "40, .2503", "60, .2331", "80, .2215", "100, .2131", "120, .2067"
    })
    void curtiusAndKniffler(double kmh, double expected) {
        assertThat(Adhesion.curtiusKniffler(Units.mpsFromKmh(kmh))).isCloseTo(expected, within(5e-5));
    }

    /** Koffman 1948 (abstract, read): 0.25 dry, 0.6 of it wet. Bourne, question 495 (read): 1/12 greasy; a half-wet
     * rail is no better than a wet one. */
    @ParameterizedTest
    @CsvSource({"DRY, 0.25", "WET, 0.15", "DAMP, 0.15", "GREASY, 0.0833", "LEAVES, 0.04", "SANDED, 0.25"})
    void atLowSpeed(RailState rail, double expected) {
        assertThat(Adhesion.coefficient(rail, 5)).isCloseTo(expected, within(1e-4));
    }

    /** Randolph 1910 (read): 16 to 18 per cent used on long grades; the coefficient allows no less than was used, on a dry rail. */
    @Test
    void allowsWhatWasUsedOnLongGrades() {
        assertThat(Adhesion.coefficient(RailState.DRY, Units.mpsFromMph(12))).isGreaterThan(0.18);
    }

    @Test
    void neverRisesWithSpeed() {
        for (RailState rail : RailState.values()) {
            assertThat(Adhesion.coefficient(rail, 30)).isLessThanOrEqualTo(Adhesion.coefficient(rail, 3));
        }
    }
}
