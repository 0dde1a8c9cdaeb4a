package org.crosshead.stock.web;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows the engines, and takes the acceptance of an estimate among an engine's own figures. */
@Controller
class EngineController {

    private final Engines engines;
    private final LocomotiveClasses classes;
    private final Words words;

    EngineController(Engines engines, LocomotiveClasses classes, Words words) {
        this.engines = engines;
        this.classes = classes;
        this.words = words;
    }

    @GetMapping("/engines")
    String list(Model model) {
        model.addAttribute("engines", engines.all());
        model.addAttribute(
                "classNames",
                classes.all().stream()
                        .map(ClassRevision::content)
                        .collect(Collectors.toMap(content -> content.code(), content -> content.name())));
        return "stock/engines";
    }

    @GetMapping("/engines/{number}")
    String show(@PathVariable String number, Model model) {
        return page(number, List.of(), model);
    }

    @PostMapping("/engines/{number}/estimates/{key}")
    String accept(@PathVariable String number, @PathVariable String key, Model model, RedirectAttributes next) {
        List<FormProblem> problems = Submission.accept(key, words, () -> engines.acceptEstimate(number, key));
        return problems.isEmpty()
                ? Submission.done("estimate-accepted", "/engines/{number}", next)
                : page(number, problems, model);
    }

    private String page(String number, List<FormProblem> problems, Model model) {
        EngineRevision revision = engines.current(number).orElseThrow(() -> new NotFoundException("engine", number));
        ClassRevision ofClass = classes.current(revision.content().classCode()).orElseThrow();
        model.addAttribute("revision", revision);
        model.addAttribute("madeOn", words.day(revision.madeAt()));
        model.addAttribute("ofClass", ofClass.content());
        model.addAttribute("problems", problems);
        model.addAttribute("acceptBase", "/engines/" + revision.content().number());
        model.addAttribute("figures", FigureLine.byNeed(ownFigures(revision)));
        model.addAttribute(
                "missing",
                StockModel.engine(ofClass, revision) instanceof EngineFigures.Missing lacking
                        ? LackingFigure.of(lacking.missing())
                        : List.of());
        return "stock/engine";
    }

    /** Only what the engine has in place of its class's figures. */
    private List<FigureLine> ownFigures(EngineRevision revision) {
        Map<String, ?> own = revision.entries().stream()
                .collect(Collectors.toMap(entry -> entry.figure().key(), entry -> entry));
        return FigureLine.of(ClassFigure.values(), List.of(), revision.entries(), words).stream()
                .filter(line -> own.containsKey(line.spec().key()))
                .toList();
    }
}
