package org.crosshead.briefing.web;

import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.Briefings;
import org.crosshead.briefing.IssuedBriefing;
import org.crosshead.briefing.WhatIf;
import org.crosshead.kernel.traction.RailState;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A day that is not as planned, asked of a briefing. Nothing is stored and the issue stays as it is. */
@Controller
@RequestMapping("/briefings/{id}/what-if")
class WhatIfController {

    private final Briefings briefings;
    private final MessageSource messages;

    WhatIfController(Briefings briefings, MessageSource messages) {
        this.briefings = briefings;
        this.messages = messages;
    }

    /** What was asked, as it was written; null where the form was not yet sent. */
    record Form(String load, String rail, String late, String pressure) {}

    @GetMapping
    String form(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable String load,
            @RequestParam(required = false) @Nullable String rail,
            @RequestParam(required = false) @Nullable String late,
            @RequestParam(required = false) @Nullable String pressure,
            Model model) {
        IssuedBriefing briefing = briefings.show(id);
        String railNow = briefing.document().heading().rail().name();
        model.addAttribute("briefing", briefing);
        model.addAttribute("document", briefing.document());
        model.addAttribute(
                "words",
                new BriefingWords(messages, briefing.document().heading().zone()));
        model.addAttribute("rails", RailState.values());
        model.addAttribute("form", new Form(or(load, "100"), or(rail, railNow), or(late, "0"), or(pressure, "100")));
        if (load != null && rail != null && late != null && pressure != null) {
            try {
                model.addAttribute(
                        "answer",
                        briefings.whatIf(
                                id,
                                new WhatIf(
                                        number(load, "load"),
                                        state(rail),
                                        number(late, "late"),
                                        number(pressure, "pressure"))));
            } catch (BriefingRefusedException ex) {
                model.addAttribute("refused", "briefing.refused." + ex.code());
            }
        }
        return "briefing/what-if";
    }

    private static String or(@Nullable String given, String otherwise) {
        return given == null ? otherwise : given;
    }

    private static double number(String given, String field) {
        try {
            return Double.parseDouble(given.strip());
        } catch (NumberFormatException ex) {
            throw new BriefingRefusedException("what-if-" + field);
        }
    }

    private static RailState state(String given) {
        for (RailState state : RailState.values()) {
            if (state.name().equals(given)) {
                return state;
            }
        }
        throw new BriefingRefusedException("what-if-rail");
    }
}
