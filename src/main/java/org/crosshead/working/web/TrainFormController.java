package org.crosshead.working.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.Train;
import org.crosshead.working.TrainChangedException;
import org.crosshead.working.TrainRefusedException;
import org.crosshead.working.TrainRefusedException.Problem;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The form to change a train. */
@Controller
@RequestMapping("/trains/{id}/edit")
class TrainFormController {

    private final Trains trains;
    private final TrainChoices choices;
    private final TrainWords words;
    private final ZoneId zone;

    TrainFormController(Trains trains, TrainChoices choices, TrainWords words, ZoneId zone) {
        this.trains = trains;
        this.choices = choices;
        this.words = words;
        this.zone = zone;
    }

    @GetMapping
    String edit(@PathVariable long id, Model model) {
        Train train = known(id);
        model.addAttribute("form", new TrainFormWriter(zone, choices.units()).form(train));
        return page(train, train.content().day(), List.of(), model);
    }

    /** Gives the form back with more blank rows; nothing is stored. */
    @PostMapping(params = "more")
    String moreRows(
            @PathVariable long id,
            @ModelAttribute("form") TrainForm form,
            BindingResult errors,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpServletResponse.SC_OK);
        Train train = known(id);
        return page(train, train.content().day(), List.of(), model);
    }

    @PostMapping
    String change(
            @PathVariable long id,
            @ModelAttribute("form") TrainForm form,
            BindingResult errors,
            Model model,
            RedirectAttributes next) {
        Train train = known(id);
        TrainFormReader.Read read = new TrainFormReader(zone, choices.units())
                .read(form, train.content().day());
        model.addAttribute("form", read.form());
        List<Problem> problems = store(id, read);
        if (!problems.isEmpty()) {
            return page(train, read.draft().day(), problems, model);
        }
        next.addFlashAttribute("done", "train.done.changed");
        return "redirect:/trains/{id}";
    }

    private List<Problem> store(long id, TrainFormReader.Read read) {
        if (!read.problems().isEmpty()) {
            return read.problems();
        }
        try {
            trains.change(
                    id,
                    version(read.form().version()),
                    read.draft(),
                    read.form().reason());
            return List.of();
        } catch (TrainRefusedException ex) {
            return ex.problems();
        } catch (TrainChangedException ex) {
            return List.of(new Problem("", -1, "reason", "changed-meanwhile", List.of()));
        }
    }

    /** Returns the version from which a form was filled; what can't be read matches none. */
    static long version(String typed) {
        return typed.matches("\\d{1,18}") ? Long.parseLong(typed) : -1;
    }

    private Train known(long id) {
        return trains.find(id).orElseThrow(() -> new NotFoundException("train", id));
    }

    private String page(Train train, LocalDate day, List<Problem> problems, Model model) {
        model.addAttribute("train", train);
        model.addAttribute("refusals", words.of(problems));
        choices.addTo(model, day);
        return "working/edit";
    }
}
