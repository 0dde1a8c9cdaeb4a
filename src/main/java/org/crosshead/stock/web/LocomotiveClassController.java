package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.BestHandles;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineFigures;
import org.crosshead.stock.EngineMaker;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.FiguresNeeded;
import org.crosshead.stock.IndicatorCards;
import org.crosshead.stock.LocomotiveClassDraft.ClassNote;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.PullTable;
import org.crosshead.stock.ResistanceRule;
import org.crosshead.stock.ShortMoves;
import org.crosshead.stock.SteamTable;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows the classes of engines, and takes the acceptance of an estimate. */
@Controller
class LocomotiveClassController {

    private final LocomotiveClasses classes;
    private final Engines engines;
    private final EngineMaker engineMaker;
    private final Words words;

    LocomotiveClassController(LocomotiveClasses classes, Engines engines, EngineMaker engineMaker, Words words) {
        this.classes = classes;
        this.engines = engines;
        this.engineMaker = engineMaker;
        this.words = words;
    }

    /**
     * A class in the list.
     *
     * @param lacking how many figures a forecast still lacks
     */
    record ClassLine(String code, String name, boolean tenderEngine, long engines, int lacking) {}

    @GetMapping("/classes")
    String list(Model model) {
        List<EngineRevision> all = engines.all();
        model.addAttribute(
                "classes",
                classes.all().stream().map(revision -> line(revision, all)).toList());
        return "stock/classes";
    }

    @GetMapping("/classes/{code}")
    String show(@PathVariable String code, Model model) {
        return page(code, List.of(), model);
    }

    @PostMapping("/classes/{code}/estimates/{key}")
    String accept(@PathVariable String code, @PathVariable String key, Model model, RedirectAttributes next) {
        List<FormProblem> problems = Submission.accept(key, words, () -> classes.acceptEstimate(code, key));
        return problems.isEmpty()
                ? Submission.done("estimate-accepted", "/classes/{code}", next)
                : page(code, problems, model);
    }

    private static ClassLine line(ClassRevision revision, List<EngineRevision> all) {
        String code = revision.content().code();
        return new ClassLine(
                code,
                revision.content().name(),
                revision.content().tenderEngine(),
                all.stream()
                        .filter(engine -> engine.content().classCode().equals(code))
                        .count(),
                StockModel.engine(revision, null) instanceof EngineFigures.Missing lacking
                        ? lacking.missing().size()
                        : 0);
    }

    private String page(String code, List<FormProblem> problems, Model model) {
        ClassRevision revision =
                classes.current(code).orElseThrow(() -> new NotFoundException("locomotive class", code));
        EngineFigures figures = StockModel.engine(revision, null);
        model.addAttribute("revision", revision);
        model.addAttribute("problems", problems);
        model.addAttribute("acceptBase", "/classes/" + revision.content().code());
        model.addAttribute(
                "figures",
                FigureLine.byNeed(FigureLine.of(
                        ClassFigure.values(), FiguresNeeded.ofClass(revision.content()), revision.entries(), words)));
        model.addAttribute(
                "missing",
                figures instanceof EngineFigures.Missing lacking ? LackingFigure.of(lacking.missing()) : List.of());
        model.addAttribute("topics", topics(revision.content().notes()));
        model.addAttribute("engines", engines.ofClass(code));
        model.addAttribute(
                "history",
                classes.history(code).stream()
                        .map(one -> new RevisionLine(one.number(), words.day(one.madeAt()), one.madeBy(), one.reason()))
                        .toList());
        if (figures instanceof EngineFigures.Resolved known) {
            Engine engine = engineMaker.of(known.parameters());
            model.addAttribute(
                    "curves",
                    CurvesPage.of(
                            PullTable.of(engine, known.resistance(ResistanceRule.USUAL)),
                            revision.content().name(),
                            words));
            model.addAttribute("steam", SteamPage.of(SteamTable.of(engine)));
            model.addAttribute(
                    "cards",
                    CardsPage.of(
                            IndicatorCards.of(known.parameters()),
                            revision.content().name(),
                            words));
            model.addAttribute("best", BestHandlesPage.of(BestHandles.of(engine), words));
            model.addAttribute("shortMoves", ShortMovesPage.of(ShortMoves.of(known), words));
        }
        return "stock/class";
    }

    /** Returns the notes in the order in which a crew needs them. */
    private static Map<NoteTopic, List<String>> topics(List<ClassNote> notes) {
        Map<NoteTopic, List<String>> topics = new EnumMap<>(NoteTopic.class);
        notes.forEach(note ->
                topics.computeIfAbsent(note.topic(), topic -> new ArrayList<>()).add(note.text()));
        return topics;
    }
}
