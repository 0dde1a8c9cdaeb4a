package org.crosshead.kernel.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.crosshead.kernel.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks block friction, conversion model and brake cylinders against published figures. */
class BrakeApparatusReferenceTests {

    /** Printed to three figures. */
    @ParameterizedTest
    @CsvFileSource(resources = "friction.csv", useHeadersInDisplayName = true)
    void frictionFallsAsPublished(double kmh, String source, double friction) {
        assertThat(CastIronBlocks.friction(Units.mpsFromKmh(kmh))).as(source).isCloseTo(friction, within(5e-4));
    }

    /** The trials themselves scatter by 30 per cent. */
    @ParameterizedTest
    @CsvFileSource(resources = "galton.csv", useHeadersInDisplayName = true)
    void frictionIsNearGaltonsFromMemory(double mph, String source, String status, double friction) {
        assertThat(CastIronBlocks.friction(Units.mpsFromMph(mph)))
                .as("%s, %s", source, status)
                .isCloseTo(friction, withinPercentage(30));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "subset026.csv", useHeadersInDisplayName = true)
    void convertsBrakedPercentage(String quantity, String source, double lambda, double value, double tolerance) {
        double got = switch (quantity) {
            case "LIMIT" -> Units.kmhFromMps(Subset026Conversion.speedLimitMps(lambda));
            case "0" -> Subset026Conversion.basicMps2(lambda);
            default -> Subset026Conversion.stepMps2(Integer.parseInt(quantity), lambda);
        };
        assertThat(got).as(source).isCloseTo(value, within(tolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "subset026-times.csv", useHeadersInDisplayName = true)
    void buildsUpInThePublishedTime(
            Subset026Times train, Application.Kind kind, String source, double lengthM, double seconds) {
        double got = kind == Application.Kind.EMERGENCY ? train.emergencyS(lengthM) : train.serviceS(lengthM);
        assertThat(got).as(source).isCloseTo(seconds, within(1e-3));
    }

    /** [SUBSET-026-3] A.3.8.6 and A.3.9.8 (read). */
    @ParameterizedTest
    @CsvSource({"PASSENGER_P, 1.42, 1.06", "FREIGHT_P, 2.99, 2.07", "FREIGHT_G, 9.30, 5.70"})
    void reactsInThePublishedTime(Subset026Times train, double emergencyS, double serviceS) {
        assertThat(train.emergencyReactionS()).isEqualTo(emergencyS);
        assertThat(train.serviceReactionS()).isEqualTo(serviceS);
    }

    /** [WORKED] (computed): force of a vacuum cylinder of so many inches with the released vacuum behind it. */
    @ParameterizedTest
    @CsvSource({"15, 8.11", "18, 11.68", "21, 15.89", "24, 20.76", "30, 32.43"})
    void vacuumCylinderPullsAsComputed(double diameterIn, double kilonewtons) {
        double diameterM = Units.metresFromInches(diameterIn);
        double forceN = ServiceBrakes.VACUUM_RELEASED_PA * Math.PI * diameterM * diameterM / 4;
        assertThat(forceN).isCloseTo(kilonewtons * 1000, withinPercentage(0.5));
    }

    /** [RCTS] (read): most lines release at 21 inches; common practice, no rule is cited. */
    @Test
    void vacuumIsReleasedAtTwentyOneInches() {
        assertThat(Units.barFromPa(ServiceBrakes.VACUUM_RELEASED_PA)).isCloseTo(0.7111, within(1e-3));
    }
}
