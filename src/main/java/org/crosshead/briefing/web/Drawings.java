package org.crosshead.briefing.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.crosshead.briefing.document.BriefingDocument;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * Makes what is frozen of a briefing's page, the strips and the workings of its figures, and keeps the latest: a stored document
 * never changes, so neither do they.
 */
@Component
class Drawings {

    private static final int KEPT = 40;

    private final MessageSource messages;
    private final ITemplateEngine templates;
    private final Map<Long, Frozen> drawn = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Frozen> eldest) {
            return size() > KEPT;
        }
    };

    Drawings(MessageSource messages, ITemplateEngine templates) {
        this.messages = messages;
        this.templates = templates;
    }

    /**
     * The frozen parts of a page.
     *
     * @param workings HTML of the section that says why
     * @param braking HTML of the section on braking and standing
     */
    record Frozen(List<Panel> panels, String workings, String braking) {}

    /**
     * One panel of the strip.
     *
     * @param wide SVG for a tablet and paper
     * @param narrow SVG for a screen under 600 px
     * @param words the same in words
     */
    record Panel(double fromM, double toM, String wide, String narrow, String words) {}

    synchronized Frozen of(long id, BriefingDocument document, BriefingWords words) {
        return drawn.computeIfAbsent(
                id, unused -> new Frozen(draw(document, words), workings(document, words), braking(document, words)));
    }

    private String workings(BriefingDocument document, BriefingWords words) {
        Context context = new Context(Locale.UK, Map.of("document", document, "words", words));
        return templates.process("briefing/workings", context);
    }

    private String braking(BriefingDocument document, BriefingWords words) {
        Map<Integer, String> curves = BrakingDrawings.of(document.braking(), words);
        Context context =
                new Context(Locale.UK, Map.of("document", document, "words", words, "brakingDrawings", curves));
        return templates.process("briefing/braking", context);
    }

    private List<Panel> draw(BriefingDocument document, BriefingWords words) {
        RoadWords roadWords = RoadWords.of(messages, Locale.UK);
        List<String> wide = RoadDrawing.svgPanels(document, roadWords);
        List<String> narrow = RoadDrawing.narrowPanels(document, roadWords);
        List<List<org.crosshead.briefing.document.Phrase>> text =
                StripText.paragraphs(document.road(), document.handling(), document.sureness(), roadWords);
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < wide.size(); i++) {
            StringBuilder paragraph = new StringBuilder();
            text.get(i).forEach(phrase -> paragraph.append(words.text(phrase)).append(' '));
            panels.add(new Panel(
                    document.road().panels().get(i),
                    document.road().panels().get(i + 1),
                    wide.get(i),
                    narrow.get(i),
                    paragraph.toString().strip()));
        }
        return panels;
    }
}
