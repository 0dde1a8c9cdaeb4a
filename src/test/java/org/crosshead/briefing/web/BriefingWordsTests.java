package org.crosshead.briefing.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Term;
import org.crosshead.route.MeasureUnit;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;

class BriefingWordsTests {

    private static final BriefingWords WORDS = new BriefingWords(messages(), "Europe/Vienna");

    private static ResourceBundleMessageSource messages() {
        ResourceBundleMessageSource source = new ResourceBundleMessageSource();
        source.setBasenames("messages/briefing", "messages/strip");
        source.setDefaultEncoding("UTF-8");
        source.setFallbackToSystemLocale(false);
        return source;
    }

    private static Place chains(String landmark, double past) {
        return new Place(0, "R", 83, MeasureUnit.CHAINS, landmark, past);
    }

    @Test
    void placeIsToldByWhatWasPassed() {
        assertThat(WORDS.place(chains("the tunnel", 24))).isEqualTo("24 chains past the tunnel (1m 3ch)");
        assertThat(WORDS.place(chains("the tunnel", 1))).isEqualTo("1 chain past the tunnel (1m 3ch)");
        assertThat(WORDS.place(chains("the tunnel", -3))).isEqualTo("3 chains before the tunnel (1m 3ch)");
        assertThat(WORDS.place(chains("the tunnel", 0))).isEqualTo("at the tunnel (1m 3ch)");
        assertThat(WORDS.place(new Place(0, "R", 83, MeasureUnit.CHAINS, null, 0)))
                .isEqualTo("1m 3ch");
        assertThat(WORDS.place(new Place(0, "K", 17.138, MeasureUnit.KILOMETRES, "the hut", 0.26)))
                .isEqualTo("260\u00a0m past the hut (17.138 km)");
    }

    @Test
    void numberWithAFigureBehindItStandsAlone() {
        var pieces = WORDS.pieces(Phrase.of(
                "today.stalls",
                Term.text("x"),
                Term.figure(210, "tons", "limit.load"),
                Term.number(4.56, "tons of pull")));
        assertThat(pieces).anySatisfy(piece -> {
            assertThat(piece.text()).isEqualTo("210\u00a0tons");
            assertThat(piece.figure()).isEqualTo("limit.load");
        });
        assertThat(pieces).anySatisfy(piece -> assertThat(piece.text()).isEqualTo("4.6\u00a0tons of pull"));
    }

    @Test
    void gradientsAndLatenessAreTheTradesWords() {
        assertThat(WORDS.number(98.4, "1 in")).isEqualTo("1 in 98 up");
        assertThat(WORDS.number(-130, "1 in")).isEqualTo("1 in 130 down");
        assertThat(WORDS.number(12, "s")).isEqualTo("in time");
        assertThat(WORDS.number(125, "s")).isEqualTo("2 min late");
        assertThat(WORDS.number(-95, "s")).isEqualTo("2 min early");
        assertThat(WORDS.number(-0.2, "mph")).isEqualTo("0\u00a0mph");
    }

    @Test
    void timesAreOfTheRailwaysClock() {
        assertThat(WORDS.time(Instant.parse("2026-07-01T08:00:00Z"))).isEqualTo("10:00");
        assertThat(WORDS.time(Instant.parse("2026-01-01T08:00:30Z"))).isEqualTo("09:00:30");
        assertThat(WORDS.time(null)).isEqualTo("\u2013");
    }

    @Test
    void textOfAPersonIsNeverTakenForAPattern() {
        assertThat(WORDS.text(Phrase.of("braking.stop", Term.text("{0} <script> '' {"))))
                .isEqualTo("Stop at {0} <script> '' {");
    }
}
