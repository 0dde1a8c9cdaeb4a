package org.crosshead.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;

/** The drawn strip, on an invented road: that it may stand in a page, and that it can be read. */
class StripDrawingTests {

    private static final int BYTES_MOST = 40_000;
    private static final StripModel MODEL = StripFixtures.twoPanels();

    /** Each panel of the strip, wide and narrow. */
    static Stream<Arguments> panels() {
        List<Arguments> panels = new ArrayList<>();
        for (PanelFormat format : PanelFormat.values()) {
            List<StripPanel> parts = parts(format);
            for (int i = 0; i < parts.size(); i++) {
                panels.add(Arguments.of(format, i));
            }
        }
        return panels.stream();
    }

    private static List<StripPanel> parts(PanelFormat format) {
        if (format == PanelFormat.WIDE) {
            return StripFixtures.panels();
        }
        List<StripPanel> parts = new ArrayList<>();
        for (StripPanel panel : StripFixtures.panels()) {
            List<Double> breaks = StripPanel.narrowBreaks(MODEL, panel.fromM(), panel.toM());
            for (int i = 1; i < breaks.size(); i++) {
                parts.add(new StripPanel(breaks.get(i - 1), breaks.get(i), panel.label()));
            }
        }
        return parts;
    }

    @ParameterizedTest
    @MethodSource("panels")
    void isWellFormedAndMayStandInAPage(PanelFormat format, int index) {
        String svg = StripDrawing.panels(MODEL, parts(format), format).get(index);
        assertThatCode(() -> DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg))))
                .doesNotThrowAnyException();
        assertThat(svg)
                .startsWith("<svg ")
                .doesNotContain("style", "<script", "<!DOCTYPE", "<?xml", "NaN", "rgb(", "clip-path", " on");
        assertThat(svg).contains("role=\"img\" aria-label=\"Strip, ", "viewBox=\"0 0 ");
        assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(BYTES_MOST);
    }

    @ParameterizedTest
    @MethodSource("panels")
    void labelsStandClearOfEachOtherAndOfThePoints(PanelFormat format, int index) {
        PanelWriter panel = StripDrawing.writer(MODEL, parts(format), format, index);
        List<Box> boxes = new ArrayList<>(panel.written().stream().map(Box::of).toList());
        panel.joints().forEach(joint -> boxes.add(Box.of(joint)));
        assertThat(boxes).hasSizeGreaterThan(20);
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            assertThat(box.left()).as(box.name()).isGreaterThanOrEqualTo(0);
            assertThat(box.right()).as(box.name()).isLessThanOrEqualTo(format.widthPx);
            assertThat(box.bottom()).as(box.name()).isLessThanOrEqualTo(panel.heightPx());
            assertThat(boxes.subList(i + 1, boxes.size())).as(box.name()).noneMatch(other -> other.meets(box));
        }
    }

    @ParameterizedTest
    @MethodSource("panels")
    void pointsStandInsideTheLaneFarEnoughApartToTap(PanelFormat format, int index) {
        List<StripGraphics.Joint> joints =
                StripDrawing.writer(MODEL, parts(format), format, index).joints();
        assertThat(joints).isNotEmpty();
        for (StripGraphics.Joint joint : joints) {
            assertThat(joint.x()).isBetween(format.leftPx + 9.9, format.widthPx - format.rightPx - 9.9);
            assertThat(joints)
                    .filteredOn(other -> !other.equals(joint))
                    .allMatch(other -> Math.hypot(other.x() - joint.x(), other.y() - joint.y()) > 23.9);
        }
    }

    @Test
    void everyPointLeadsToItsRowOnce() {
        for (PanelFormat format : PanelFormat.values()) {
            String all = String.join("", StripDrawing.panels(MODEL, parts(format), format));
            List<String> hrefs = found(all, "<a href=\"([^\"]*)\"");
            assertThat(hrefs)
                    .containsExactlyInAnyOrderElementsOf(
                            MODEL.points().stream().map(StripModel.Point::href).toList());
        }
    }

    @Test
    void everyPlaceLimitAndBandIsNamed() {
        for (PanelFormat format : PanelFormat.values()) {
            List<PanelWriter> writers = new ArrayList<>();
            for (int i = 0; i < parts(format).size(); i++) {
                writers.add(StripDrawing.writer(MODEL, parts(format), format, i));
            }
            Set<String> texts = new TreeSet<>();
            writers.forEach(
                    writer -> writer.written().forEach(w -> texts.add(w.words().text())));
            MODEL.marks().stream()
                    .filter(mark -> mark.kind() != StripModel.MarkKind.SIGNAL)
                    .forEach(mark -> assertThat(texts).contains(mark.name()));
            MODEL.limits().forEach(limit -> assertThat(texts).contains(limit.label()));
            MODEL.standing().forEach(band -> assertThat(texts).contains(band.label()));
        }
    }

    @Test
    void steepestClimbAndFallAreBold() {
        PanelWriter panel = StripDrawing.writer(MODEL, StripFixtures.panels(), PanelFormat.WIDE, 1);
        assertThat(panel.written())
                .filteredOn(written -> written.words().text().startsWith("1 in "))
                .extracting(written -> written.words().text() + (written.words().bold() ? " bold" : ""))
                .containsExactlyInAnyOrder("1 in 82 \u2197 bold", "1 in 95 \u2198 bold", "1 in 400 \u2198");
    }

    @Test
    void restrictionIsHatchedAndTextIsEscaped() {
        List<String> panels = StripDrawing.panels(MODEL, StripFixtures.panels(), PanelFormat.WIDE);
        assertThat(panels.get(0)).contains("fill=\"url(#sw0-hatch)\"", "id=\"sw0-hatch\"");
        assertThat(panels.get(1)).contains("Little &lt;Wick&gt; &amp; &quot;Hope&quot;");
    }

    @Test
    void sameModelGivesTheSameText() {
        assertThat(StripDrawing.panels(MODEL, StripFixtures.panels(), PanelFormat.WIDE))
                .isEqualTo(StripDrawing.panels(StripFixtures.twoPanels(), StripFixtures.panels(), PanelFormat.WIDE));
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        StripModel bare = StripFixtures.bareRoad();
        List<String> panels = StripDrawing.panels(bare, List.of(new StripPanel(0, 1000, "Strip, ")), PanelFormat.WIDE);
        assertThat(panels).hasSize(1);
        assertThat(panels.get(0)).contains("lowest 48 %").doesNotContain("NaN", "Boiler", "Fireman");
    }

    @Test
    void crowdedPanelStaysWithinItsSize() {
        StripModel crowded = StripFixtures.crowdedRoad();
        List<StripPanel> one = List.of(new StripPanel(0, crowded.lengthM(), "Strip, crowded"));
        String svg = StripDrawing.panels(crowded, one, PanelFormat.WIDE).get(0);
        assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(BYTES_MOST);
        assertThat(found(svg, "<a href=\"([^\"]*)\"")).hasSize(crowded.points().size());
    }

    private static List<String> found(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        List<String> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** Ground that words or a point cover. */
    private record Box(String name, double left, double top, double right, double bottom) {

        static Box of(StripGraphics.Written written) {
            Words words = written.words();
            double left = written.x() - written.anchor().share * words.widthPx();
            return new Box(
                    words.text(),
                    left,
                    written.y() - Words.ASCENT * words.sizePx(),
                    left + words.widthPx(),
                    written.y() + Words.DESCENT * words.sizePx());
        }

        static Box of(StripGraphics.Joint joint) {
            String name = "point " + joint.point().number();
            return new Box(name, joint.x() - 10, joint.y() - 10, joint.x() + 10, joint.y() + 10);
        }

        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }
}
