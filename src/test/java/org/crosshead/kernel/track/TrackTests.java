package org.crosshead.kernel.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TrackTests {

    private static final SpeedLimits LIMITS = SpeedLimits.of(
            10_000, 25, List.of(new SpeedLimits.Length(2_000, 5_000, 15), new SpeedLimits.Length(4_000, 6_000, 10)));

    @Test
    void leastLimitCountsWhereSeveralCover() {
        assertThat(LIMITS.limitAt(1_000)).isEqualTo(25);
        assertThat(LIMITS.limitAt(3_000)).isEqualTo(15);
        assertThat(LIMITS.limitAt(4_500)).isEqualTo(10);
        assertThat(LIMITS.limitAt(5_500)).isEqualTo(10);
        assertThat(LIMITS.limitAt(7_000)).isEqualTo(25);
        assertThat(LIMITS.lengths()).hasSize(2);
    }

    @Test
    void limitHoldsUntilTheTailHasCleared() {
        assertThat(LIMITS.lowestMps(5_950, 6_150)).isEqualTo(10);
        assertThat(LIMITS.lowestMps(6_010, 6_210)).isEqualTo(25);
        assertThat(LIMITS.lowestMps(1_500, 6_500)).isEqualTo(10);
    }

    @Test
    void curveDragIsTheMeanOverTheTrain() {
        Curves curves =
                Curves.of(new double[] {0, 1_000, 1_400, 3_000}, new double[] {Double.POSITIVE_INFINITY, 400, 1_000});
        Curves.CurveDrag drag = curves.drag(radiusM -> Double.isInfinite(radiusM) ? 0 : 10 / radiusM);
        assertThat(drag.mean(900, 200)).isZero();
        assertThat(drag.mean(1_100, 200)).isCloseTo(0.0125, within(1e-12));
        assertThat(drag.workTo(1_400, 1) - drag.workTo(1_001, 1)).isCloseTo(399 * 0.025, within(1e-9));
        assertThat(curves.radiusAt(1_200)).isEqualTo(400);
    }

    @Test
    void trackReachesFromEndToEnd() {
        Track track = new Track(GradientProfile.even(10_000, 0.01), Curves.straight(10_000), LIMITS);
        assertThat(track.startM()).isZero();
        assertThat(track.endM()).isEqualTo(10_000);
        assertThat(track.curves().radiusAt(5)).isInfinite();
    }

    @Test
    void refusesALimitOfZeroAndACurveTooTight() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SpeedLimits.Length(0, 100, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new SpeedLimits.Length(100, 100, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> Curves.of(new double[] {0, 10}, new double[] {5}));
    }
}
