package org.crosshead.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.crosshead.diagram.PullCurves.Curve;
import org.crosshead.diagram.PullCurves.Line;
import org.crosshead.diagram.PullCurves.Point;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Checks that the drawing may stand inside a page as it is: well formed, labelled, and without inline styles. */
class PullCurvesTests {

    private static final PullCurves.Words WORDS =
            new PullCurves.Words("Speed (mph)", "Pull (lbf)", "Pull <against> speed");

    @Test
    void isOneSvgElementWithoutPrologOrStyles() throws Exception {
        String svg = draw();

        assertThat(svg)
                .startsWith("<svg")
                .doesNotContain("<?xml", "<!DOCTYPE", "<!--", "<style", "<script")
                .doesNotContainPattern("\\sstyle=");
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(document.getDocumentElement().getAttribute("aria-label")).isEqualTo("Pull <against> speed");
        assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 560 400");
    }

    @Test
    void labelsEachLineWhereItEnds() {
        assertThat(draw()).contains("75 %", "boiler", "dry rail", "Speed (mph)");
    }

    @Test
    void tellsLinesApartByStroke() {
        assertThat(draw()).contains("stroke-dasharray=\"10,5\"", "stroke-dasharray=\"2,4\"");
    }

    @Test
    void drawsTheSameTwice() {
        assertThat(draw()).isEqualTo(draw());
    }

    @Test
    void keepsIdsOfTwoDrawingsInOnePageApart() {
        assertThat(ids(draw("express"))).isNotEmpty().doesNotContainAnyElementsOf(ids(draw("tank")));
    }

    @Test
    void keepsLabelsOfLinesThatEndTogetherApart() {
        List<Point> points = List.of(new Point(0, 24_000), new Point(60, 9_000));
        String svg = PullCurves.svg(
                List.of(new Curve("75 %", Line.CUTOFF, points), new Curve("60 %", Line.CUTOFF, points)), WORDS);

        assertThat(heightOf("60 %", svg) - heightOf("75 %", svg)).isGreaterThan(16);
    }

    @Test
    void refersOnlyToItsOwnIds() {
        Set<String> referred = found(draw("express"), "url\\(#([^)]+)\\)");

        assertThat(referred).isNotEmpty().isSubsetOf(ids(draw("express")));
    }

    @Test
    void refusesALineWithoutPoints() {
        assertThatThrownBy(() -> new Curve("75 %", Line.CUTOFF, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double heightOf(String label, String svg) {
        return Pattern.compile("<text [^>]*?\\sy=\"([0-9.]+)\"[^>]*>\\s*" + label)
                .matcher(svg)
                .results()
                .mapToDouble(match -> Double.parseDouble(match.group(1)))
                .findFirst()
                .orElseThrow();
    }

    private static Set<String> ids(String svg) {
        return found(svg, " id=\"([^\"]+)\"");
    }

    private static Set<String> found(String svg, String pattern) {
        return Pattern.compile(pattern)
                .matcher(svg)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
    }

    private static String draw() {
        return draw(WORDS.spoken());
    }

    private static String draw(String spoken) {
        return PullCurves.svg(
                List.of(
                        new Curve("75 %", Line.CUTOFF, List.of(new Point(0, 24_000), new Point(60, 9_000))),
                        new Curve("boiler", Line.BOILER, List.of(new Point(10, 40_000), new Point(60, 8_000))),
                        new Curve("dry rail", Line.RAIL, List.of(new Point(0, 30_000), new Point(60, 22_000)))),
                new PullCurves.Words(WORDS.speed(), WORDS.pull(), spoken));
    }
}
