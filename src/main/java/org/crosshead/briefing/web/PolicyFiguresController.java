package org.crosshead.briefing.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.crosshead.briefing.Policies;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.PolicyRefusedException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The figures that the railway lays down for itself: what holds today with its source, and what waits for a second person. */
@Controller
@RequestMapping("/policy-figures")
class PolicyFiguresController {

    private final Policy policy;
    private final Policies policies;
    private final Clock clock;
    private final ZoneId zone;

    PolicyFiguresController(Policy policy, Policies policies, Clock clock, ZoneId zone) {
        this.policy = policy;
        this.policies = policies;
        this.clock = clock;
        this.zone = zone;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute(
                "figures", policy.on(LocalDate.now(clock.withZone(zone))).values());
        model.addAttribute("proposed", policies.proposed());
        return "briefing/policy-figures";
    }

    @PostMapping("/approve")
    String approve(@RequestParam String key, @RequestParam int version, RedirectAttributes flash) {
        try {
            policies.approve(key, version);
            flash.addFlashAttribute("done", "briefing.policy-figures.approved");
        } catch (PolicyRefusedException ex) {
            flash.addFlashAttribute("refused", "policy.refused." + ex.code());
        }
        return "redirect:/policy-figures";
    }
}
