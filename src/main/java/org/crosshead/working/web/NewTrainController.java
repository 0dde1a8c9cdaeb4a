package org.crosshead.working.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.NewTrain;
import org.crosshead.working.Train;
import org.crosshead.working.TrainRefusedException;
import org.crosshead.working.TrainRefusedException.Problem;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The short form from which a new train is begun. */
@Controller
@RequestMapping("/trains/new")
class NewTrainController {

    private static final String USUAL_DEPARTURE = "10:00";
    private static final String USUAL_CODE = "N";
    private static final int CODES_MAX = 1000;

    private final Trains trains;
    private final NewTrain newTrain;
    private final TrainChoices choices;
    private final TrainWords words;
    private final ZoneId zone;
    private final Clock clock;

    NewTrainController(
            Trains trains, NewTrain newTrain, TrainChoices choices, TrainWords words, ZoneId zone, Clock clock) {
        this.trains = trains;
        this.newTrain = newTrain;
        this.choices = choices;
        this.words = words;
        this.zone = zone;
        this.clock = clock;
    }

    @GetMapping
    String form(Model model) {
        model.addAttribute("form", filled(tomorrow(), newTrain.places()));
        return page(List.of(), tomorrow(), model);
    }

    @PostMapping
    String begin(
            @Valid @ModelAttribute("form") NewTrainForm form,
            BindingResult errors,
            Model model,
            RedirectAttributes next) {
        TypedFields fields = new TypedFields();
        NewTrainReader reader = new NewTrainReader(zone, choices, fields);
        NewTrain.Wish wish = reader.wish(form, tomorrow());
        List<Problem> problems = new ArrayList<>(missing(errors));
        problems.addAll(fields.problems().stream()
                .filter(problem -> !errors.hasFieldErrors(problem.field()))
                .toList());
        if (!problems.isEmpty()) {
            return page(problems, wish.day(), model);
        }
        try {
            Train train = trains.enter(newTrain.draft(wish));
            next.addFlashAttribute("done", "train.done.begun");
            return "redirect:/trains/" + train.id();
        } catch (TrainRefusedException ex) {
            return page(NewTrainReader.onShortForm(ex.problems(), wish), wish.day(), model);
        }
    }

    private static List<Problem> missing(BindingResult errors) {
        return errors.getFieldErrors().stream()
                .map(error ->
                        new Problem("", -1, error.getField(), String.valueOf(error.getDefaultMessage()), List.of()))
                .toList();
    }

    private NewTrainForm filled(LocalDate day, List<String> places) {
        String formation = choices.firstFormation();
        return new NewTrainForm(
                freeCode(day),
                places.isEmpty() ? "" : places.get(0),
                places.isEmpty() ? "" : places.get(places.size() - 1),
                day.toString(),
                USUAL_DEPARTURE,
                TrainKind.PASSENGER.name(),
                "true",
                formation,
                choices.firstEngineFor(formation),
                "",
                "",
                "",
                RailState.DRY.name(),
                "",
                "",
                "");
    }

    private String freeCode(LocalDate day) {
        Set<String> taken =
                trains.between(day, day).stream().map(TrainSummary::code).collect(Collectors.toSet());
        return IntStream.range(1, CODES_MAX)
                .mapToObj(number -> USUAL_CODE + number)
                .filter(code -> !taken.contains(code))
                .findFirst()
                .orElse("");
    }

    private LocalDate tomorrow() {
        return LocalDate.now(clock.withZone(zone)).plusDays(1);
    }

    private String page(List<Problem> problems, LocalDate day, Model model) {
        model.addAttribute("refusals", words.of(problems));
        choices.addTo(model, day);
        return "working/new";
    }
}
