package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.KnowledgePolicy;
import org.crosshead.competence.KnowledgePolicy.Regime;
import org.crosshead.competence.KnowledgePolicyDesk;
import org.crosshead.competence.Subject;
import org.crosshead.routeknowledge.Band;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The railway's own rules on how long knowledge lasts, what a turn may last, and what a driver must have. */
@Controller
@RequestMapping("/knowledge-policy")
class PolicyController {

    private static final List<Kind> MAY_COUNT = List.of(Kind.WORKED_CONDUCTED, Kind.RODE, Kind.CONDUCTED, Kind.LEARNED);

    private final KnowledgePolicyDesk desk;

    PolicyController(KnowledgePolicyDesk desk) {
        this.desk = desk;
    }

    @GetMapping
    String list(HttpServletRequest request, Model model) {
        List<KnowledgePolicy> all = desk.all();
        model.addAttribute("policies", all);
        model.addAttribute("newest", all.get(0));
        model.addAttribute("bands", Band.values());
        model.addAttribute("mayCount", MAY_COUNT);
        model.addAttribute("regimes", Regime.values());
        model.addAttribute("mayPropose", request.isUserInRole("MANAGER"));
        model.addAttribute(
                "mayApprove",
                request.isUserInRole("MANAGER")
                        || request.isUserInRole("ASSESSOR")
                        || request.isUserInRole("INSPECTOR"));
        return "competence/policy";
    }

    /** What was sent, as it was written; a box that is not ticked is null. */
    record Form(
            @Nullable String validFrom,
            @Nullable String hard,
            @Nullable String usual,
            @Nullable String easy,
            @Nullable String classes,
            @Nullable String assessment,
            @Nullable String warn,
            @Nullable String urgent,
            @Nullable List<Kind> keepsAlive,
            @Nullable String verifies,
            @Nullable String licence,
            @Nullable String medical,
            @Nullable String observed,
            @Nullable String tested,
            @Nullable String turn,
            @Nullable String rest,
            @Nullable String pause,
            @Nullable String week,
            @Nullable String turns,
            @Nullable String month,
            @Nullable String days,
            @Nullable String off,
            @Nullable String longRest,
            @Nullable String anew,
            @Nullable String proving,
            @Nullable String holders,
            @Nullable String easyGrades,
            @Nullable Regime regime) {}

    @PostMapping
    String propose(Form form, RedirectAttributes flash) {
        try {
            desk.propose(policy(form));
            flash.addFlashAttribute("done", "competence.policy.proposed");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/knowledge-policy";
    }

    private static KnowledgePolicy policy(Form form) {
        Set<Kind> keeps = EnumSet.of(Kind.WORKED);
        if (form.keepsAlive() != null) {
            keeps.addAll(form.keepsAlive());
        }
        Set<Subject> needs = new HashSet<>();
        if (form.licence() != null) {
            needs.add(Subject.LICENCE);
        }
        if (form.medical() != null) {
            needs.add(Subject.MEDICAL);
        }
        if (form.observed() != null) {
            needs.add(Subject.OBSERVED);
        }
        if (form.tested() != null) {
            needs.add(Subject.TESTED);
        }
        Regime regime = form.regime();
        if (regime == null) {
            throw new ActRefusedException("not-offered");
        }
        return new KnowledgePolicy(
                0,
                Typed.day(form.validFrom(), () -> new ActRefusedException("no-day")),
                new EnumMap<>(Map.of(
                        Band.HARD, whole(form.hard()), Band.USUAL, whole(form.usual()), Band.EASY, whole(form.easy()))),
                whole(form.classes()),
                whole(form.assessment()),
                whole(form.warn()),
                keeps,
                form.verifies() != null,
                needs,
                new KnowledgePolicy.Hours(
                        number(form.turn()),
                        number(form.rest()),
                        number(form.pause()),
                        number(form.week()),
                        whole(form.turns()),
                        new KnowledgePolicy.Accrued(
                                number(given(form.month())),
                                whole(given(form.days())),
                                number(given(form.off())),
                                number(given(form.longRest())))),
                new KnowledgePolicy.Upkeep(
                        whole(form.anew()),
                        form.proving() != null,
                        whole(form.holders()),
                        form.easyGrades() != null,
                        whole(given(form.urgent()))),
                regime,
                "",
                "");
    }

    /** Where nothing is written there is no such limit. */
    private static String given(@Nullable String typed) {
        return typed == null || typed.isBlank() ? "0" : typed;
    }

    private static int whole(@Nullable String typed) {
        double number = number(typed);
        if (number != Math.rint(number) || number > 1_000) {
            throw new ActRefusedException("policy-number");
        }
        return (int) number;
    }

    private static double number(@Nullable String typed) {
        try {
            double number = Double.parseDouble(typed == null ? "" : typed.strip());
            if (!(number >= 0 && number < Double.POSITIVE_INFINITY)) {
                throw new ActRefusedException("policy-number");
            }
            return number;
        } catch (NumberFormatException ex) {
            throw new ActRefusedException("policy-number");
        }
    }

    @PostMapping("/{version}/approve")
    String approve(@PathVariable int version, RedirectAttributes flash) {
        try {
            desk.approve(version);
            flash.addFlashAttribute("done", "competence.policy.approved-done");
        } catch (ActRefusedException ex) {
            flash.addFlashAttribute("refused", "competence.refused." + ex.code());
        }
        return "redirect:/knowledge-policy";
    }
}
