package org.crosshead.briefing.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.junit.jupiter.api.Test;

/** The strip in words, on an invented road. */
class StripTextTests {

    private final RoadWords words = RoadWords.packed();
    private final List<List<Phrase>> paragraphs =
            StripText.paragraphs(RoadFixtures.eightMiles(), RoadFixtures.handling(), null, words);

    @Test
    void tellsTheSecondPanelInRunningOrder() {
        assertThat(paragraphs).hasSize(2);
        assertThat(said(paragraphs.get(1)))
                .containsExactly(
                        "At Rushy Bridge.",
                        "The speed here is forecast as 50 mph, with 200 psi and 66 per cent of the glass.",
                        "The limit is 80 km/h.",
                        "The road climbs at 1 in 87 for 1 miles.",
                        "If stopped from here on, the train starts again only with sand.",
                        "Water: column.",
                        "If stopped from here on, the train does not start.",
                        "The road falls at 12.5 \u2030 for 2 miles.",
                        "Point 5.",
                        "action.shut",
                        "Then Little Wick.");
    }

    @Test
    void namesTheNumberOfARestriction() {
        assertThat(said(paragraphs.get(0))).contains("A temporary restriction to 20 mph begins: number T12.");
    }

    @Test
    void namesWhatACrossingIs() {
        assertThat(said(paragraphs.get(0))).contains("Take care: level crossing Marsh Lane.", "Then Hobb tunnel.");
    }

    private List<String> said(List<Phrase> paragraph) {
        return paragraph.stream().map(this::said).toList();
    }

    private String said(Phrase phrase) {
        if (!phrase.kind().startsWith("strip.")) {
            return phrase.kind();
        }
        Object[] terms = phrase.terms().stream()
                .map(Term::text)
                .map(Objects::requireNonNull)
                .toArray();
        return words.say("phrase." + phrase.kind(), terms);
    }
}
