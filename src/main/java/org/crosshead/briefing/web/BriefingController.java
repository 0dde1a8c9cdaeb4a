package org.crosshead.briefing.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.BriefingSummary;
import org.crosshead.briefing.Briefings;
import org.crosshead.briefing.IssuedBriefing;
import org.crosshead.briefing.Preparations;
import org.crosshead.briefing.Progress;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.MessageSource;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The briefing of a train: preparing, issuing, reading, signing for it. */
@Controller
@RequestMapping("/briefings")
class BriefingController {

    private final Briefings briefings;
    private final Trains trains;
    private final OwnTrains ownTrains;
    private final Drawings drawings;
    private final MessageSource messages;
    private final CurrentActor actor;
    private final ZoneId zone;
    private final Clock clock;
    private final Preparations preparations;
    private final Duration patience;
    private final WhoKnows whoKnows;

    BriefingController(
            Briefings briefings,
            Trains trains,
            OwnTrains ownTrains,
            Drawings drawings,
            MessageSource messages,
            CurrentActor actor,
            ZoneId zone,
            Clock clock,
            Preparations preparations,
            WhoKnows whoKnows,
            @Value("${crosshead.briefing.patience}") Duration patience) {
        this.preparations = preparations;
        this.whoKnows = whoKnows;
        this.patience = patience;
        this.briefings = briefings;
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.drawings = drawings;
        this.messages = messages;
        this.actor = actor;
        this.zone = zone;
        this.clock = clock;
    }

    /** The briefings of the trains of today and tomorrow. */
    @GetMapping
    String ofTheseDays(Model model) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        List<TrainSummary> shown = ownTrains.visible(trains.between(today, today.plusDays(1)));
        Map<Long, BriefingSummary> latest = new HashMap<>();
        shown.forEach(train -> briefings.latest(train.id()).ifPresent(briefing -> latest.put(train.id(), briefing)));
        model.addAttribute("trains", shown);
        model.addAttribute("latest", latest);
        return "briefing/index";
    }

    @GetMapping(params = "train")
    String ofTrain(@RequestParam long train, Model model) {
        Train shown = trains.find(train).orElseThrow(() -> new NotFoundException("train", train));
        model.addAttribute("briefings", briefings.ofTrain(train));
        model.addAttribute("train", shown);
        model.addAttribute("inspector", actor.get().holds("INSPECTOR"));
        return "briefing/list";
    }

    @PostMapping
    String prepare(@RequestParam long train, RedirectAttributes flash) {
        preparations.begin(train);
        return preparations
                .await(train, patience)
                .flatMap(standing -> prepared(train, standing, flash))
                .orElse("redirect:/briefings/preparing/" + train);
    }

    /** How far a train's briefing has come; asks again by itself until it is there. */
    @GetMapping("/preparing/{train}")
    String preparing(@PathVariable long train, Model model, RedirectAttributes flash, HttpServletResponse response) {
        Train shown = trains.find(train).orElseThrow(() -> new NotFoundException("train", train));
        Optional<Preparations.Standing> standing = preparations.await(train, Duration.ZERO);
        if (standing.isEmpty()) {
            return "redirect:/briefings?train=" + train;
        }
        Optional<String> ended = prepared(train, standing.get(), flash);
        if (ended.isPresent()) {
            return ended.get();
        }
        response.setHeader("Refresh", "1");
        model.addAttribute("train", shown);
        model.addAttribute("parts", Progress.Part.values());
        model.addAttribute("now", standing.get().part());
        return "briefing/preparing";
    }

    private static Optional<String> prepared(long train, Preparations.Standing standing, RedirectAttributes flash) {
        if (standing.briefingId() != null) {
            flash.addFlashAttribute("done", "briefing.prepared");
            return Optional.of("redirect:/briefings/" + standing.briefingId());
        }
        if (standing.refused() != null) {
            flash.addFlashAttribute("refused", "briefing.refused." + standing.refused());
            return Optional.of("redirect:/briefings?train=" + train);
        }
        return Optional.empty();
    }

    @PostMapping("/{id}/issue")
    String issue(@PathVariable long id, @RequestParam(defaultValue = "") String despite, RedirectAttributes flash) {
        try {
            briefings.issue(id, despite);
            flash.addFlashAttribute("done", "briefing.issued");
        } catch (BriefingRefusedException ex) {
            flash.addFlashAttribute("refused", "briefing.refused." + ex.code());
            flash.addFlashAttribute("despite", despite);
        }
        return "redirect:/briefings/{id}/standing";
    }

    /** The briefing itself, without a form in it, so that it can be kept on the device as it is. */
    @GetMapping("/{id}")
    String briefing(@PathVariable long id, @RequestParam(required = false) @Nullable Double from, Model model) {
        IssuedBriefing briefing = briefings.show(id);
        BriefingWords words =
                new BriefingWords(messages, briefing.document().heading().zone());
        model.addAttribute("briefing", briefing);
        model.addAttribute("document", briefing.document());
        model.addAttribute("words", words);
        Drawings.Frozen frozen = drawings.of(id, briefing.document(), words);
        model.addAttribute("brakingSection", frozen.braking());
        model.addAttribute(
                "stretches", Stretch.of(frozen.panels(), briefing.document().handling()));
        model.addAttribute("workings", frozen.workings());
        model.addAttribute("knows", whoKnows.of(briefing.trainId()).orElse(null));
        model.addAttribute("here", FromHere.at(briefing.document(), from == null ? 0 : from));
        return "briefing/briefing";
    }

    /** The run in large type, for the cab. */
    @GetMapping("/{id}/cab")
    String cab(@PathVariable long id, Model model) {
        IssuedBriefing briefing = briefings.show(id);
        BriefingWords words =
                new BriefingWords(messages, briefing.document().heading().zone());
        model.addAttribute("briefing", briefing);
        model.addAttribute("document", briefing.document());
        model.addAttribute("lines", CabSheet.lines(briefing.document(), words));
        return "briefing/cab";
    }

    /** Where a briefing stands: what to do with it, who has read it. */
    @GetMapping("/{id}/standing")
    String standing(@PathVariable long id, Model model) {
        IssuedBriefing briefing = briefings.show(id);
        model.addAttribute("briefing", briefing);
        model.addAttribute(
                "words",
                new BriefingWords(messages, briefing.document().heading().zone()));
        model.addAttribute("inspector", actor.get().holds("INSPECTOR"));
        model.addAttribute("clientId", UUID.randomUUID().toString());
        model.addAttribute("deviceTime", clock.instant().toString());
        return "briefing/standing";
    }

    @PostMapping("/{id}/acknowledgements")
    String acknowledge(
            @PathVariable long id,
            @RequestParam String clientId,
            @RequestParam String deviceTime,
            RedirectAttributes flash) {
        try {
            briefings.acknowledge(id, clientId, moment(deviceTime));
            flash.addFlashAttribute("done", "briefing.acknowledged");
        } catch (BriefingRefusedException ex) {
            flash.addFlashAttribute("refused", "briefing.refused." + ex.code());
        }
        return "redirect:/briefings/{id}/standing";
    }

    /** The token that a device needs to send what it kept while it had no signal. */
    @GetMapping("/{id}/token")
    @ResponseBody
    Map<String, String> token(@PathVariable long id, CsrfToken token) {
        briefings.show(id);
        return Map.of("parameter", token.getParameterName(), "token", token.getToken());
    }

    private static Instant moment(String deviceTime) {
        try {
            return Instant.parse(deviceTime);
        } catch (DateTimeParseException ex) {
            throw new BriefingRefusedException("device-time");
        }
    }
}
