package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.TrainCover;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Where the depot is thin: how many drivers could work each train, this month and in each of the next twelve. */
@Controller
class CoverController {

    private static final int MONTHS = 12;

    private final TrainCover cover;
    private final KnowledgePolicies policies;
    private final Clock clock;
    private final ZoneId zone;

    CoverController(TrainCover cover, KnowledgePolicies policies, Clock clock, ZoneId zone) {
        this.cover = cover;
        this.policies = policies;
        this.clock = clock;
        this.zone = zone;
    }

    @GetMapping("/cover")
    String trains(Model model) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        List<Integer> months = IntStream.rangeClosed(0, MONTHS).boxed().toList();
        model.addAttribute("months", months);
        model.addAttribute("patterns", cover.of(today, months));
        model.addAttribute("least", policies.on(today).upkeep().holdersLeast());
        return "competence/cover";
    }
}
