package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.EngineRevision;
import org.crosshead.stock.Engines;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockProblem;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Form by which an engine is entered or changed. */
@Controller
class EngineFormController {

    private static final String NEW = "/engines/new";

    private final Engines engines;
    private final LocomotiveClasses classes;
    private final Words words;

    EngineFormController(Engines engines, LocomotiveClasses classes, Words words) {
        this.engines = engines;
        this.classes = classes;
        this.words = words;
    }

    @GetMapping(NEW)
    String enter(@RequestParam(defaultValue = "") String classCode, Model model) {
        Map<String, String> fields =
                Map.of("number", "", "classCode", classCode, "reason", words.of("stock.form.first-entry"));
        return page(EditForm.fresh(NEW, fields, FigureRow.filled(ClassFigure.values(), List.of())), model);
    }

    @GetMapping("/engines/{number}/edit")
    String change(@PathVariable String number, Model model) {
        EngineRevision current = current(number);
        EngineDraft content = current.content();
        Map<String, String> fields = Map.of(
                "number", content.number(),
                "name", content.name(),
                "classCode", content.classCode(),
                "remarks", content.remarks());
        List<FigureRow> rows = FigureRow.filled(ClassFigure.values(), content.figures());
        return page(EditForm.change(action(content), current.number(), fields, rows), model);
    }

    @PostMapping(NEW)
    String create(@RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        EditForm form = EditForm.fresh(NEW, fields, FigureRow.typed(ClassFigure.values(), fields));
        return store(form, List.of(), model, next);
    }

    @PostMapping("/engines/{number}/edit")
    String revise(
            @PathVariable String number,
            @RequestParam Map<String, String> fields,
            Model model,
            RedirectAttributes next) {
        EngineDraft content = current(number).content();
        EditForm form = EditForm.change(
                action(content),
                EditForm.basedOn(fields),
                Fields.with(fields, "number", content.number()),
                FigureRow.typed(ClassFigure.values(), fields));
        return store(form, content.figures(), model, next);
    }

    private String store(EditForm form, List<SourcedFigure> before, Model model, RedirectAttributes next) {
        List<StockProblem> unreadable = new ArrayList<>();
        EngineDraft draft = new EngineDraft(
                Fields.text(form.fields(), "number"),
                Fields.text(form.fields(), "name"),
                Fields.text(form.fields(), "classCode"),
                Fields.text(form.fields(), "remarks"),
                FigureRow.figures(form.figures(), before, unreadable));
        List<FormProblem> problems = Submission.send(
                form,
                unreadable,
                words,
                () -> engines.enter(draft, Fields.text(form.fields(), "reason"), form.basedOn()));
        return problems.isEmpty()
                ? Submission.done("stored", "/engines/" + draft.number(), next)
                : page(form.refused(problems), model);
    }

    private String page(EditForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute(
                "classes", classes.all().stream().map(ClassRevision::content).toList());
        return "stock/engine-edit";
    }

    private static String action(EngineDraft content) {
        return "/engines/" + content.number() + "/edit";
    }

    private EngineRevision current(String number) {
        return engines.current(number).orElseThrow(() -> new NotFoundException("engine", number));
    }
}
