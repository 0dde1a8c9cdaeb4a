package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.FiguresNeeded;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.stock.figure.VehicleFigure;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows the kinds of vehicles, and takes the acceptance of an estimate. */
@Controller
class VehicleKindController {

    private final VehicleKinds kinds;
    private final Words words;

    VehicleKindController(VehicleKinds kinds, Words words) {
        this.kinds = kinds;
        this.words = words;
    }

    /**
     * A kind in the list.
     *
     * @param lacking how many figures a forecast still lacks
     */
    record KindLine(String code, String name, ResistanceFamily family, BrakeKind brake, long lacking) {}

    @GetMapping("/vehicles")
    String list(Model model) {
        model.addAttribute("kinds", kinds.all().stream().map(this::listed).toList());
        return "stock/vehicles";
    }

    @GetMapping("/vehicles/{code}")
    String show(@PathVariable String code, Model model) {
        return page(code, List.of(), model);
    }

    @PostMapping("/vehicles/{code}/estimates/{key}")
    String accept(@PathVariable String code, @PathVariable String key, Model model, RedirectAttributes next) {
        List<FormProblem> problems = Submission.accept(key, words, () -> kinds.acceptEstimate(code, key));
        return problems.isEmpty()
                ? Submission.done("estimate-accepted", "/vehicles/{code}", next)
                : page(code, problems, model);
    }

    private KindLine listed(VehicleKindRevision revision) {
        return new KindLine(
                revision.content().code(),
                revision.content().name(),
                revision.content().family(),
                revision.content().brake(),
                lines(revision).stream().filter(FigureLine::lacking).count());
    }

    private String page(String code, List<FormProblem> problems, Model model) {
        VehicleKindRevision revision = kinds.current(code).orElseThrow(() -> new NotFoundException("vehicle", code));
        List<FigureLine> lines = lines(revision);
        model.addAttribute("revision", revision);
        model.addAttribute("madeOn", words.day(revision.madeAt()));
        model.addAttribute("problems", problems);
        model.addAttribute("acceptBase", "/vehicles/" + revision.content().code());
        model.addAttribute("figures", FigureLine.byNeed(lines));
        model.addAttribute("missing", LackingFigure.of(code, lines));
        return "stock/vehicle";
    }

    private List<FigureLine> lines(VehicleKindRevision revision) {
        return FigureLine.of(
                VehicleFigure.values(), FiguresNeeded.ofVehicle(revision.content()), revision.entries(), words);
    }
}
