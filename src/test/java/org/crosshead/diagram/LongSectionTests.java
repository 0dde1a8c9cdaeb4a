package org.crosshead.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.crosshead.diagram.LongSection.Panel;
import org.crosshead.diagram.LongSection.Place;
import org.crosshead.diagram.LongSection.Point;
import org.crosshead.diagram.LongSection.Profile;
import org.crosshead.diagram.LongSection.Slope;
import org.crosshead.diagram.LongSection.Words;
import org.junit.jupiter.api.Test;

/** Checks what stands in the drawing of a long section; the road is invented. */
class LongSectionTests {

    private static final Words WORDS = new Words("miles", "feet above the lowest point", "the whole road");
    private static final Profile ROAD = new Profile(
            List.of(new Point(0, 0), new Point(4, 211), new Point(10, 54)),
            List.of(new Slope(0, 4, "1 in 100"), new Slope(4, 4.05, "1 in 77"), new Slope(4.05, 10, "1 in 200")),
            List.of(new Place(0, "Anfang"), new Place(9, "<b>Ende</b>")));

    @Test
    void writesGradientsAndStationsWhereTheyAre() {
        String svg = LongSection.svg(ROAD, new Panel(0, 10), WORDS);

        assertThat(svg)
                .startsWith("<svg")
                .contains("1 in 100", "1 in 200", "Anfang", "miles", "feet above the lowest point")
                .contains("aria-label=\"the whole road\"");
    }

    @Test
    void leavesTheLabelOfAVeryShortLengthToTheTable() {
        assertThat(LongSection.svg(ROAD, new Panel(0, 10), WORDS)).doesNotContain("1 in 77");
    }

    @Test
    void showsOnlyWhatLiesInThePanel() {
        assertThat(LongSection.svg(ROAD, new Panel(5, 10), WORDS))
                .contains("1 in 200", "Ende")
                .doesNotContain("1 in 100", "Anfang");
    }

    @Test
    void takesNamesAsTextAndHoldsNoStyleOrScript() {
        assertThat(LongSection.svg(ROAD, new Panel(0, 10), WORDS))
                .contains("&lt;b&gt;Ende&lt;/b&gt;")
                .doesNotContain("<b>", " style=", "<style", "<script", "<!DOCTYPE", "<?xml");
    }

    @Test
    void drawsTheSameRoadTheSameWay() {
        assertThat(LongSection.svg(ROAD, new Panel(0, 10), WORDS))
                .isEqualTo(LongSection.svg(ROAD, new Panel(0, 10), WORDS));
    }

    @Test
    void refusesARoadOfOnePoint() {
        assertThatThrownBy(() -> new Profile(List.of(new Point(0, 0)), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
