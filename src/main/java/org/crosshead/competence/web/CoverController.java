package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.TrainCover;
import org.crosshead.crew.People;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where the depot is thin: how many drivers could work each train, this month and in each of the next twelve. */
@Controller
class CoverController {

    private static final int MONTHS = 12;

    private final TrainCover cover;
    private final KnowledgePolicies policies;
    private final People people;
    private final Clock clock;
    private final ZoneId zone;

    CoverController(TrainCover cover, KnowledgePolicies policies, People people, Clock clock, ZoneId zone) {
        this.cover = cover;
        this.policies = policies;
        this.people = people;
        this.clock = clock;
        this.zone = zone;
    }

    /** From how many months on how many drivers are left. */
    record Change(int month, int drivers) {}

    /** A train, how many could work it now, and when that changes. */
    record Row(TrainCover.Pattern pattern, int now, List<Change> later) {}

    private static Row row(TrainCover.Pattern pattern) {
        List<Integer> drivers = pattern.drivers();
        List<Change> later = IntStream.range(1, drivers.size())
                .filter(month -> !drivers.get(month).equals(drivers.get(month - 1)))
                .mapToObj(month -> new Change(month, drivers.get(month)))
                .toList();
        return new Row(pattern, drivers.get(0), later);
    }

    @GetMapping("/cover")
    String trains(@RequestParam(defaultValue = "") String depot, Model model) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        List<Integer> months = IntStream.rangeClosed(0, MONTHS).boxed().toList();
        model.addAttribute(
                "rows",
                cover.of(depot.isBlank() ? null : depot, today, months).stream()
                        .map(CoverController::row)
                        .toList());
        model.addAttribute("depot", depot);
        model.addAttribute("depots", people.depots());
        model.addAttribute("least", policies.on(today).upkeep().holdersLeast());
        return "competence/cover";
    }
}
