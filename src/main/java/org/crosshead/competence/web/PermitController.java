package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.Permits;
import org.crosshead.crew.People;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Routes;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.Trains;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
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

    PermitController(Permits permits, Trains trains, OwnTrains ownTrains, People people, Routes routes) {
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
        model.addAttribute("mayConfirm", request.isUserInRole("MANAGER") || request.isUserInRole("INSPECTOR"));
        model.addAttribute("permit", permits.of(trainId));
        model.addAttribute("names", new Names(people.all()));
        model.addAttribute("measures", new SectionController.RouteMeasures(routes));
        return "competence/permit";
    }

    @PostMapping("/confirm")
    String confirm(@PathVariable long trainId, RedirectAttributes flash) {
        try {
            permits.confirm(trainId);
            flash.addFlashAttribute("done", "competence.permit.confirmed");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/permits/{trainId}";
    }
}
