package org.crosshead.briefing.web;

import java.io.Serializable;
import java.util.List;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.Briefings;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.HandPointDraft.Kind;
import org.crosshead.briefing.IssuedBriefing;
import org.crosshead.briefing.PlansByHand;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Place;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** An inspector changes a plan by hand. Each change makes the briefing anew. */
@Controller
@RequestMapping("/briefings/{id}/by-hand")
class ByHandController {

    private static final double SAME_PLACE_M = 1;

    private final Briefings briefings;
    private final PlansByHand plans;
    private final MessageSource messages;

    ByHandController(Briefings briefings, PlansByHand plans, MessageSource messages) {
        this.briefings = briefings;
        this.plans = plans;
        this.messages = messages;
    }

    /**
     * What was sent, as it was written.
     *
     * @param at metres along the path of one of the places offered
     * @param to likewise
     * @param regulator 0, 0.5 or 1
     * @param cutoff per cent
     */
    record Form(
            @Nullable Kind kind,
            @Nullable String at,
            @Nullable String to,
            @Nullable String regulator,
            @Nullable String cutoff,
            @Nullable String note,
            @Nullable String reason)
            implements Serializable {}

    @GetMapping
    String page(@PathVariable long id, Model model) {
        IssuedBriefing briefing = briefings.show(id);
        long newest = briefings.ofTrain(briefing.trainId()).get(0).id();
        if (newest != id) {
            return "redirect:/briefings/" + newest + "/by-hand";
        }
        model.addAttribute("briefing", briefing);
        model.addAttribute("document", briefing.document());
        model.addAttribute(
                "words",
                new BriefingWords(messages, briefing.document().heading().zone()));
        model.addAttribute("places", briefings.places(id));
        model.addAttribute("points", settings(briefing));
        if (!model.containsAttribute("form")) {
            model.addAttribute("form", new Form(null, null, null, null, null, null, null));
        }
        return "briefing/by-hand";
    }

    private static List<HandlingRow> settings(IssuedBriefing briefing) {
        return briefing.document().handling().stream()
                .filter(HandlingRow::setsOnTheRoad)
                .toList();
    }

    @PostMapping
    String enter(@PathVariable long id, Form form, RedirectAttributes flash) {
        IssuedBriefing briefing = briefings.show(id);
        try {
            long made = plans.enter(briefing.trainId(), draft(briefing, form));
            flash.addFlashAttribute("done", "briefing.by-hand.kept");
            return "redirect:/briefings/" + made + "/by-hand";
        } catch (BriefingRefusedException ex) {
            flash.addFlashAttribute("form", form);
            return refused(briefing, ex, flash);
        }
    }

    private String refused(IssuedBriefing briefing, BriefingRefusedException ex, RedirectAttributes flash) {
        BriefingWords words =
                new BriefingWords(messages, briefing.document().heading().zone());
        flash.addFlashAttribute("refused", "briefing.refused." + ex.code());
        flash.addFlashAttribute("refusedAt", ex.place().map(words::place).orElse(""));
        return "redirect:/briefings/{id}/by-hand";
    }

    @PostMapping("/{point}/withdraw")
    String withdraw(@PathVariable long id, @PathVariable long point, RedirectAttributes flash) {
        IssuedBriefing briefing = briefings.show(id);
        try {
            long made = plans.withdraw(briefing.trainId(), point);
            flash.addFlashAttribute("done", "briefing.by-hand.withdrawn");
            return "redirect:/briefings/" + made + "/by-hand";
        } catch (BriefingRefusedException ex) {
            return refused(briefing, ex, flash);
        }
    }

    private HandPointDraft draft(IssuedBriefing briefing, Form form) {
        Kind kind = form.kind();
        if (kind == null) {
            throw new BriefingRefusedException("hand-place");
        }
        List<Place> offered = briefings.places(briefing.id());
        boolean ofPlan = kind == Kind.MOVED || kind == Kind.STRUCK;
        List<Place> from =
                ofPlan ? settings(briefing).stream().map(HandlingRow::place).toList() : offered;
        Double regulator = kind == Kind.SET ? number(form.regulator(), "hand-regulator") : null;
        Double cutoff = regulator == null || regulator <= 0 ? null : number(form.cutoff(), "hand-cutoff") / 100;
        return new HandPointDraft(
                kind,
                spot(form.at(), from),
                kind == Kind.MOVED ? spot(form.to(), offered) : null,
                regulator,
                cutoff,
                kind == Kind.NOTE && form.note() != null ? form.note() : "",
                form.reason() == null ? "" : form.reason());
    }

    private static HandSpot spot(@Nullable String given, List<Place> offered) {
        double atM = number(given, "hand-place");
        return offered.stream()
                .filter(place -> Math.abs(place.positionM() - atM) < SAME_PLACE_M)
                .findFirst()
                .map(place -> new HandSpot(place.routeCode(), place.measure(), place.positionM()))
                .orElseThrow(() -> new BriefingRefusedException("hand-place"));
    }

    private static double number(@Nullable String given, String code) {
        try {
            return Double.parseDouble(given == null ? "" : given.strip());
        } catch (NumberFormatException ex) {
            throw new BriefingRefusedException(code);
        }
    }
}
