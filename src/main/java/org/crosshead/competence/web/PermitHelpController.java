package org.crosshead.competence.web;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Conducting;
import org.crosshead.competence.ConductorDrivers;
import org.crosshead.competence.Diversions;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.Routes;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who goes along as conductor driver of a train, and where it may be diverted. */
@Controller
@RequestMapping("/permits/{trainId}")
class PermitHelpController {

    private static final String BACK = "redirect:/permits/{trainId}";

    private final ConductorDrivers conductors;
    private final Diversions diversions;
    private final Routes routes;
    private final ZoneId zone;

    PermitHelpController(ConductorDrivers conductors, Diversions diversions, Routes routes, ZoneId zone) {
        this.conductors = conductors;
        this.diversions = diversions;
        this.routes = routes;
        this.zone = zone;
    }

    @PostMapping("/conducting")
    String ask(
            @PathVariable long trainId,
            @RequestParam long driver,
            @RequestParam long conductor,
            @RequestParam Conducting.Case permitted,
            @RequestParam(defaultValue = "") String informed,
            RedirectAttributes flash) {
        return done(
                flash,
                "competence.conducting.asked",
                () -> conductors.ask(trainId, driver, conductor, permitted, moment(informed)));
    }

    @PostMapping("/conducting/{id}")
    String answer(
            @PathVariable long trainId, @PathVariable long id, @RequestParam boolean yes, RedirectAttributes flash) {
        return done(flash, "competence.conducting.answered", () -> conductors.answer(id, yes));
    }

    @PostMapping("/diversions")
    String plan(
            @PathVariable long trainId,
            @RequestParam String route,
            @RequestParam String line,
            @RequestParam String from,
            @RequestParam String to,
            RedirectAttributes flash) {
        MeasureUnit unit =
                routes.current(route).map(one -> one.content().measureUnit()).orElse(MeasureUnit.CHAINS);
        return done(
                flash,
                "competence.diversions.planned",
                () -> diversions.plan(trainId, route, line.strip(), measure(from, unit), measure(to, unit)));
    }

    @PostMapping("/diversions/{id}/remove")
    String remove(@PathVariable long trainId, @PathVariable long id, RedirectAttributes flash) {
        return done(flash, "competence.diversions.removed", () -> diversions.remove(trainId, id));
    }

    private static String done(RedirectAttributes flash, String said, Runnable work) {
        try {
            work.run();
            flash.addFlashAttribute("done", said);
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return BACK;
    }

    private static double measure(String typed, MeasureUnit unit) {
        return Measures.parse(typed.strip(), unit).orElseThrow(() -> new ActRefusedException("section-measure"));
    }

    private @Nullable Instant moment(String typed) {
        try {
            return typed.isBlank()
                    ? null
                    : LocalDateTime.parse(typed.strip()).atZone(zone).toInstant();
        } catch (DateTimeParseException ex) {
            throw new ActRefusedException("conducting-told");
        }
    }
}
