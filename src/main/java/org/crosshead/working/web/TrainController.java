package org.crosshead.working.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.DayShift;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.TrainChangedException;
import org.crosshead.working.TrainNote;
import org.crosshead.working.TrainRefusedException;
import org.crosshead.working.TrainRefusedException.Problem;
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

/** Trains by day, one train, and what is done to it as a whole: copied to another day, cancelled. */
@Controller
@RequestMapping("/trains")
class TrainController {

    private final Trains trains;
    private final TrainPages pages;
    private final OwnTrains ownTrains;
    private final TrainWords words;
    private final ZoneId zone;
    private final Clock clock;
    private final List<TrainNote> notes;

    TrainController(
            Trains trains,
            TrainPages pages,
            OwnTrains ownTrains,
            TrainWords words,
            ZoneId zone,
            Clock clock,
            List<TrainNote> notes) {
        this.notes = List.copyOf(notes);
        this.trains = trains;
        this.pages = pages;
        this.ownTrains = ownTrains;
        this.words = words;
        this.zone = zone;
        this.clock = clock;
    }

    /** What is typed to cancel or copy a train, as it comes back when it is refused. */
    record Typed(String day, String reason) {}

    @GetMapping
    String byDay(@RequestParam(defaultValue = "") String day, Model model) {
        TypedFields fields = new TypedFields();
        LocalDate today = LocalDate.now(clock.withZone(zone));
        LocalDate shown = day.isBlank() ? today : fields.day(TypedFields.Cell.of("day", day.strip()), today);
        model.addAttribute("refusals", words.of(fields.problems()));
        model.addAttribute("typedDay", fields.problems().isEmpty() ? shown.toString() : day);
        model.addAttribute("page", pages.day(shown, ownTrains.visible(trains.between(shown, shown))));
        return "working/list";
    }

    @GetMapping("/{id}")
    String train(@PathVariable long id, Model model) {
        Train train = visible(id);
        return page(
                train, List.of(), new Typed(train.content().day().plusDays(1).toString(), ""), model);
    }

    @PostMapping("/{id}/copy")
    String copy(
            @PathVariable long id, @RequestParam(defaultValue = "") String day, Model model, RedirectAttributes next) {
        Train train = visible(id);
        TypedFields fields = new TypedFields();
        LocalDate onDay = fields.day(
                TypedFields.Cell.of("day", day.strip()), train.content().day());
        if (!fields.problems().isEmpty()) {
            return page(train, fields.problems(), new Typed(day, ""), model);
        }
        try {
            Train copy = trains.copy(id, onDay, new DayShift(zone));
            next.addFlashAttribute("done", "train.done.copied");
            return "redirect:/trains/" + copy.id();
        } catch (TrainRefusedException ex) {
            return page(train, onCopy(ex.problems()), new Typed(day, ""), model);
        }
    }

    /** The page has one field to copy a train, its day: everything that stands in the way is said beside it. */
    private static List<Problem> onCopy(List<Problem> problems) {
        return problems.stream()
                .map(problem -> new Problem("", -1, "day", problem.code(), problem.args()))
                .toList();
    }

    @PostMapping("/{id}/cancel")
    String cancel(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String version,
            @RequestParam(defaultValue = "") String reason,
            Model model,
            RedirectAttributes next) {
        Train train = visible(id);
        Typed typed = new Typed(train.content().day().plusDays(1).toString(), reason);
        try {
            trains.cancel(id, TrainFormController.version(version), reason.strip());
        } catch (TrainRefusedException ex) {
            return page(train, ex.problems(), typed, model);
        } catch (TrainChangedException ex) {
            Problem changed = new Problem("", -1, "reason", "changed-meanwhile", List.of());
            return page(train, List.of(changed), typed, model);
        }
        next.addFlashAttribute("done", "train.done.cancelled");
        return "redirect:/trains/{id}";
    }

    private String page(Train train, List<Problem> problems, Typed typed, Model model) {
        model.addAttribute("page", pages.train(train, trains.history(train.id())));
        model.addAttribute(
                "notes",
                notes.stream().flatMap(note -> note.of(train.id()).stream()).toList());
        model.addAttribute("refusals", words.of(problems));
        model.addAttribute("typed", typed);
        return "working/train";
    }

    private Train visible(long id) {
        Optional<Train> train = trains.find(id);
        if (train.isPresent() && !ownTrains.isVisible(train.get())) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        return train.orElseThrow(() -> new NotFoundException("train", id));
    }
}
