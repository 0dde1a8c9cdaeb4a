package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.refresh.Proposal;
import org.crosshead.competence.refresh.RefreshPlans;
import org.crosshead.competence.refresh.RefreshProblem;
import org.crosshead.competence.refresh.RefreshProblem.Need;
import org.crosshead.competence.refresh.RefreshProblem.Option;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Turns that keep knowledge alive: the manager plans and proposes them, people take or leave them. */
@Controller
@RequestMapping("/refresh")
class RefreshController {

    private final RefreshPlans plans;
    private final People people;

    RefreshController(RefreshPlans plans, People people) {
        this.plans = plans;
        this.people = people;
    }

    /** A turn of the plan, in words. */
    record Row(String person, String train, LocalDate day, String teacher, String subjects, double hours) {}

    /** A need that stays open, in words. */
    record OpenRow(
            String person,
            String subject,
            LocalDate last,
            int lacks,
            RefreshProblem.Aim aim,
            RefreshPlans.Reason reason) {}

    /** A proposal, in words. */
    record ProposalRow(Proposal proposal, String person, String teacher) {}

    @GetMapping
    String plan(HttpServletRequest request, HttpServletResponse response, Model model) {
        Names names = new Names(people.all());
        RefreshPlans.Standing standing = plans.standing();
        boolean manager = request.isUserInRole("MANAGER");
        boolean all = manager || request.isUserInRole("INSPECTOR");
        if (standing.works() && all) {
            response.setHeader("Refresh", "1");
        }
        RefreshPlans.Result result = standing.result();
        model.addAttribute("manager", manager);
        model.addAttribute("all", all);
        model.addAttribute("standing", standing);
        model.addAttribute("depots", people.depots());
        model.addAttribute("rows", result == null || !all ? List.of() : rows(result, names));
        model.addAttribute(
                "open",
                result == null || !all
                        ? List.of()
                        : result.open().stream()
                                .map(open -> new OpenRow(
                                        names.of(open.need().personId()),
                                        open.need().subject().code(),
                                        open.need().last(),
                                        open.lacks(),
                                        open.need().aim(),
                                        open.reason()))
                                .toList());
        model.addAttribute(
                "proposals",
                (all ? plans.proposals() : plans.own())
                        .stream()
                                .map(one -> new ProposalRow(one, names.of(one.personId()), names.of(one.teacherId())))
                                .toList());
        model.addAttribute("own", plans.own().stream().map(Proposal::id).toList());
        return "competence/refresh";
    }

    private static List<Row> rows(RefreshPlans.Result result, Names names) {
        return result.plan().chosen().stream()
                .map(index -> row(result.problem().options().get(index), result, names))
                .toList();
    }

    private static Row row(Option option, RefreshPlans.Result result, Names names) {
        var train = result.trains().get(option.trainId());
        return new Row(
                names.of(option.personId()),
                train == null ? "" : train.code() + " " + train.title(),
                option.day(),
                names.of(option.teacherId()),
                option.needs().stream()
                        .map(need -> result.problem().needs().get(need))
                        .map(RefreshController::said)
                        .distinct()
                        .collect(Collectors.joining(", ")),
                option.minutes() / 60.0);
    }

    private static String said(Need need) {
        return need.aim() == RefreshProblem.Aim.REFRESH
                ? need.subject().code() + " (" + need.last() + ")"
                : need.subject().code();
    }

    @PostMapping
    String begin(@RequestParam(defaultValue = "") String depot) {
        plans.begin(new Group(null, depot.isBlank() ? null : depot));
        return "redirect:/refresh";
    }

    @PostMapping("/propose")
    String propose(RedirectAttributes flash) {
        try {
            plans.propose();
            flash.addFlashAttribute("done", "competence.refresh.proposed");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/refresh";
    }

    @PostMapping("/{id}/answer")
    String answer(@PathVariable long id, @RequestParam boolean yes, RedirectAttributes flash) {
        try {
            plans.answer(id, yes);
            flash.addFlashAttribute("done", "competence.refresh.answered");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/refresh";
    }
}
