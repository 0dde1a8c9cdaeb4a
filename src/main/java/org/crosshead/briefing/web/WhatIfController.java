package org.crosshead.briefing.web;

import java.util.List;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.Briefings;
import org.crosshead.briefing.IssuedBriefing;
import org.crosshead.briefing.WhatIf;
import org.crosshead.briefing.document.Road;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** A day that is not as planned, asked of a briefing. Nothing is stored and the issue stays as it is. */
@Controller
@RequestMapping("/briefings/{id}/what-if")
class WhatIfController {

    private final Briefings briefings;
    private final Engines engines;
    private final MessageSource messages;

    WhatIfController(Briefings briefings, Engines engines, MessageSource messages) {
        this.briefings = briefings;
        this.engines = engines;
        this.messages = messages;
    }

    @GetMapping
    String form(@PathVariable long id, @ModelAttribute("given") WhatIfForm given, Model model) {
        IssuedBriefing briefing = briefings.show(id);
        String engineNow = briefing.document().heading().engines().get(0).number();
        WhatIfForm form = given.filled(briefing.document().heading().rail().name(), engineNow);
        model.addAttribute("briefing", briefing);
        model.addAttribute("document", briefing.document());
        model.addAttribute(
                "words",
                new BriefingWords(messages, briefing.document().heading().zone()));
        model.addAttribute("rails", RailState.values());
        model.addAttribute(
                "engines", engines.all().stream().map(EngineRevision::content).toList());
        model.addAttribute("things", things(briefing));
        model.addAttribute("form", form);
        model.addAttribute("more", form.asksMore(engineNow));
        if (given.sent()) {
            try {
                WhatIf asked = form.asked();
                model.addAttribute("answer", briefings.whatIf(id, asked));
            } catch (BriefingRefusedException ex) {
                model.addAttribute("refused", "briefing.refused." + ex.code());
            }
        }
        return "briefing/what-if";
    }

    /** A thing of the road by which a place is chosen. */
    record Choice(String value, String name) {}

    private static List<Choice> things(IssuedBriefing briefing) {
        return briefing.document().road().things().stream()
                .filter(thing -> !thing.name().isBlank())
                .map(WhatIfController::choice)
                .toList();
    }

    private static Choice choice(Road.Thing thing) {
        return new Choice(String.valueOf(Math.round(thing.fromM())), thing.name());
    }

    static double number(@Nullable String given, String field) {
        try {
            return Double.parseDouble(given == null ? "" : given.strip());
        } catch (NumberFormatException ex) {
            throw new BriefingRefusedException("what-if-" + field);
        }
    }
}
