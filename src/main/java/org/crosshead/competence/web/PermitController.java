package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.ZoneId;
import java.util.List;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Conducting;
import org.crosshead.competence.ConductorDrivers;
import org.crosshead.competence.Decision;
import org.crosshead.competence.Decisions;
import org.crosshead.competence.Diversions;
import org.crosshead.competence.Permit;
import org.crosshead.competence.Permits;
import org.crosshead.competence.Subject;
import org.crosshead.competence.learning.GoInstead;
import org.crosshead.crew.People;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.Trains;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** May this crew take this train? */
@Controller
@RequestMapping("/permits/{trainId}")
class PermitController {

    private final Permits permits;
    private final Trains trains;
    private final OwnTrains ownTrains;
    private final People people;
    private final Routes routes;
    private final Decisions decisions;
    private final ConductorDrivers conductors;
    private final Diversions diversions;
    private final GoInstead instead;
    private final CurrentActor actor;
    private final ZoneId zone;

    PermitController(
            Permits permits,
            Trains trains,
            OwnTrains ownTrains,
            People people,
            Routes routes,
            Decisions decisions,
            ConductorDrivers conductors,
            Diversions diversions,
            GoInstead instead,
            CurrentActor actor,
            ZoneId zone) {
        this.decisions = decisions;
        this.conductors = conductors;
        this.diversions = diversions;
        this.instead = instead;
        this.actor = actor;
        this.zone = zone;
        this.permits = permits;
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.people = people;
        this.routes = routes;
    }

    @GetMapping
    String permit(@PathVariable long trainId, HttpServletRequest request, Model model) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
        if (!ownTrains.isVisible(train)) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        model.addAttribute("train", train);
        boolean mayConfirm = request.isUserInRole("MANAGER") || request.isUserInRole("INSPECTOR");
        model.addAttribute("mayConfirm", mayConfirm);
        Permit permit = permits.of(trainId);
        List<Decision> kept = decisions.of(trainId);
        model.addAttribute("permit", permit);
        model.addAttribute("decisions", kept);
        model.addAttribute("changed", !kept.isEmpty() && !kept.get(0).permit().saysTheSame(permit));
        model.addAttribute("own", own(permit));
        model.addAttribute("instead", mayConfirm ? instead.of(permit) : List.of());
        model.addAttribute("conducting", conductors.of(trainId));
        model.addAttribute("mayAsk", request.isUserInRole("MANAGER"));
        model.addAttribute("askable", request.isUserInRole("MANAGER") ? askable(permit) : List.of());
        model.addAttribute("cases", Conducting.Case.values());
        model.addAttribute("diversions", diversions.of(trainId));
        model.addAttribute(
                "routes", routes.all().stream().map(RouteSummary::code).sorted().toList());
        model.addAttribute(
                "lines",
                train.content().legs().stream()
                        .map(TrainDraft.Leg::line)
                        .distinct()
                        .toList());
        Long me = actor.get().personId();
        model.addAttribute("me", me == null ? -1L : me);
        model.addAttribute("mayDecide", !train.cancelled());
        model.addAttribute("zone", zone);
        model.addAttribute("names", new Names(people.all()));
        model.addAttribute("measures", new SectionController.RouteMeasures(routes));
        return "competence/permit";
    }

    /** Somebody aboard who could conduct a driver and has not accepted. */
    record Askable(long driverId, long conductorId) {}

    private static List<Askable> askable(Permit permit) {
        return permit.lines().stream()
                .filter(Permit.Line::isToBeAccepted)
                .flatMap(line -> line.conductors().stream().map(one -> new Askable(line.personId(), one)))
                .distinct()
                .toList();
    }

    /** Returns what is asked of whoever looks, and nobody goes along for: what they can say they do not sign. */
    private List<Subject> own(Permit permit) {
        Long personId = actor.get().personId();
        return permit.lines().stream()
                .filter(line -> personId != null && line.personId() == personId)
                .filter(line -> line.answer() == Permit.Answer.ALLOWED || line.answer() == Permit.Answer.EXEMPT)
                .map(line -> line.holding().subject())
                .filter(subject -> subject.kind() != Subject.Kind.PERSON)
                .toList();
    }

    @PostMapping("/decline")
    String decline(
            @PathVariable long trainId,
            @RequestParam String subject,
            @RequestParam(defaultValue = "") String note,
            RedirectAttributes flash) {
        try {
            Subject declined = own(permits.of(trainId)).stream()
                    .filter(one -> (one.kind() + ":" + one.code()).equals(subject))
                    .findFirst()
                    .orElseThrow(() -> new ActRefusedException("not-offered"));
            decisions.decline(trainId, declined, note);
            flash.addFlashAttribute("done", "competence.decline.done");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/permits/{trainId}";
    }

    @PostMapping("/decide")
    String decide(@PathVariable long trainId, @RequestParam Decision.Occasion occasion, RedirectAttributes flash) {
        boolean booking = occasion == Decision.Occasion.BOOKING_ON;
        try {
            decisions.decide(trainId, booking ? occasion : Decision.Occasion.ASKED);
            flash.addFlashAttribute("done", "competence.decided");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/permits/{trainId}";
    }

    @PostMapping("/confirm")
    String confirm(
            @PathVariable long trainId,
            @RequestParam(defaultValue = "false") boolean badWeather,
            RedirectAttributes flash) {
        try {
            permits.confirm(trainId, badWeather);
            flash.addFlashAttribute("done", "competence.permit.confirmed");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/permits/{trainId}";
    }
}
