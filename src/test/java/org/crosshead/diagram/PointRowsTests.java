package org.crosshead.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How the numbered points give way to each other. */
class PointRowsTests {

    @Test
    void pointsThatDoNotMeetStandAtTheirPlaces() {
        assertThat(PointRows.apart(new double[] {50, 100, 200}, 630)).containsExactly(50, 100, 200);
    }

    @Test
    void twoThatMeetGiveWayEqually() {
        assertThat(PointRows.apart(new double[] {100, 104}, 630)).containsExactly(new double[] {90, 114}, within(1e-9));
    }

    @Test
    void pointsAtTheEndsStayInside() {
        double[] x = PointRows.apart(new double[] {0, 1, 629, 630}, 630);
        assertThat(x).containsExactly(new double[] {10, 34, 596, 620}, within(1e-9));
    }

    @Test
    void moreThanFitStandCloser() {
        double[] x = PointRows.apart(new double[20], 200);
        assertThat(x[0]).isCloseTo(10, within(1e-9));
        assertThat(x[19]).isCloseTo(190, within(1e-9));
    }
}
