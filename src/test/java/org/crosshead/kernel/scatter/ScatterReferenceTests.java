package org.crosshead.kernel.scatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn, against the printed table of the normal distribution; what is counted, against a worked example by hand. */
class ScatterReferenceTests {

    private static final int DRAWN = 200_000;
    private static final double[] NORMALS = normals();

    private static double[] normals() {
        SplittableRandom random = new SplittableRandom(7);
        return IntStream.range(0, DRAWN).mapToDouble(i -> Day.normal(random)).toArray();
    }

    /** Areas of the normal curve as every table prints them (from memory). */
    @ParameterizedTest
    @CsvSource({"-1.2816, 0.1000", "-1, 0.1587", "0, 0.5000", "0.6745, 0.7500", "1.2816, 0.9000", "2, 0.9772"})
    void drawsAreNormal(double deviations, double area) {
        long below = Arrays.stream(NORMALS).filter(drawn -> drawn <= deviations).count();
        double standardError = Math.sqrt(area * (1 - area) / DRAWN);
        assertThat((double) below / DRAWN).isCloseTo(area, within(4 * standardError));
    }

    @Test
    void nothingIsDrawnFartherOutThanThreeDeviations() {
        for (double drawn : NORMALS) {
            assertThat(Math.abs(drawn)).isLessThanOrEqualTo(3);
        }
    }

    /** Eleven values 0 to 10: the tenth lies at 1, the middle at 5, the ninth tenth at 9. Of twelve to 11: 1.1, 5.5 and 9.9. */
    @Test
    void bandsLieWhereCountingByHandPutsThem() {
        double[] eleven = IntStream.rangeClosed(0, 10).mapToDouble(i -> i).toArray();
        assertThat(ScatteredRuns.share(eleven, 11, 0.1)).isCloseTo(1, within(1e-12));
        assertThat(ScatteredRuns.share(eleven, 11, 0.5)).isCloseTo(5, within(1e-12));
        assertThat(ScatteredRuns.share(eleven, 11, 0.9)).isCloseTo(9, within(1e-12));
        double[] twelve = IntStream.rangeClosed(0, 11).mapToDouble(i -> i).toArray();
        assertThat(ScatteredRuns.share(twelve, 12, 0.1)).isCloseTo(1.1, within(1e-12));
        assertThat(ScatteredRuns.share(twelve, 12, 0.9)).isCloseTo(9.9, within(1e-12));
    }

    @Test
    void noBandIsGivenWhereFewerThanHalfTheDaysCame() {
        assertThat(ScatteredRuns.share(new double[] {1, 2, 3}, 7, 0.5)).isNaN();
        assertThat(ScatteredRuns.share(new double[] {1, 2, 3, 4}, 7, 0.5)).isEqualTo(2.5);
    }
}
