package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.ClassRevision;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
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

/** Form by which a class of engines is entered, as a copy of another where wanted, or changed. */
@Controller
class LocomotiveClassFormController {

    private static final String NEW = "/classes/new";

    private final LocomotiveClasses classes;
    private final Words words;

    LocomotiveClassFormController(LocomotiveClasses classes, Words words) {
        this.classes = classes;
        this.words = words;
    }

    @GetMapping(NEW)
    String enter(@RequestParam(defaultValue = "") String from, Model model) {
        Map<String, String> fields = classes.current(from)
                .map(copied -> fields(copied.content()))
                .orElseGet(LocomotiveClassFormController::customary);
        fields.put("code", "");
        fields.put("reason", words.of("stock.form.first-entry"));
        List<SourcedFigure> figures =
                classes.current(from).map(copied -> copied.content().figures()).orElse(List.of());
        return page(EditForm.fresh(NEW, fields, FigureRow.filled(ClassFigure.values(), figures)), model);
    }

    @GetMapping("/classes/{code}/edit")
    String change(@PathVariable String code, Model model) {
        ClassRevision current = current(code);
        LocomotiveClassDraft content = current.content();
        List<FigureRow> rows = FigureRow.filled(ClassFigure.values(), content.figures());
        return page(EditForm.change(action(content), current.number(), fields(content), rows), model);
    }

    @PostMapping(NEW)
    String create(@RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        EditForm form = EditForm.fresh(NEW, NoteFields.closedUp(fields), FigureRow.typed(ClassFigure.values(), fields));
        return store(form, List.of(), model, next);
    }

    @PostMapping("/classes/{code}/edit")
    String revise(
            @PathVariable String code, @RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        LocomotiveClassDraft content = current(code).content();
        EditForm form = EditForm.change(
                action(content),
                EditForm.basedOn(fields),
                Fields.with(NoteFields.closedUp(fields), "code", content.code()),
                FigureRow.typed(ClassFigure.values(), fields));
        return store(form, content.figures(), model, next);
    }

    private String store(EditForm form, List<SourcedFigure> before, Model model, RedirectAttributes next) {
        List<StockProblem> unreadable = new ArrayList<>();
        LocomotiveClassDraft draft = draft(form.fields(), FigureRow.figures(form.figures(), before, unreadable));
        List<FormProblem> problems = Submission.send(
                form,
                unreadable,
                words,
                () -> classes.enter(draft, Fields.text(form.fields(), "reason"), form.basedOn()));
        return problems.isEmpty()
                ? Submission.done("stored", "/classes/" + draft.code(), next)
                : page(form.refused(problems), model);
    }

    private static LocomotiveClassDraft draft(Map<String, String> fields, List<SourcedFigure> figures) {
        return new LocomotiveClassDraft(
                Fields.text(fields, "code"),
                Fields.text(fields, "name"),
                Fields.text(fields, "description"),
                Boolean.parseBoolean(fields.get("tenderEngine")),
                Fields.choice(fields, "valveFamily", ValveFamily.SHORT_TRAVEL),
                Fields.choice(fields, "engineBrake", BrakeKind.NONE),
                Fields.choice(fields, "trainBrake", BrakeKind.NONE),
                figures,
                NoteFields.notes(fields));
    }

    private static Map<String, String> fields(LocomotiveClassDraft content) {
        Map<String, String> fields = NoteFields.of(content.notes());
        fields.put("code", content.code());
        fields.put("name", content.name());
        fields.put("description", content.description());
        fields.put("tenderEngine", Boolean.toString(content.tenderEngine()));
        fields.put("valveFamily", content.valveFamily().name());
        fields.put("engineBrake", content.engineBrake().name());
        fields.put("trainBrake", content.trainBrake().name());
        return fields;
    }

    private static Map<String, String> customary() {
        Map<String, String> fields = new HashMap<>();
        fields.put("tenderEngine", "true");
        fields.put("valveFamily", ValveFamily.SHORT_TRAVEL.name());
        fields.put("engineBrake", BrakeKind.STEAM.name());
        fields.put("trainBrake", BrakeKind.VACUUM.name());
        return fields;
    }

    private String page(EditForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("valveFamilies", ValveFamily.values());
        model.addAttribute("brakes", BrakeKind.values());
        model.addAttribute("trainBrakes", List.of(BrakeKind.VACUUM, BrakeKind.AIR, BrakeKind.NONE));
        model.addAttribute("topics", NoteTopic.values());
        model.addAttribute("noteRows", NoteFields.rows(form.fields()));
        return "stock/class-edit";
    }

    private static String action(LocomotiveClassDraft content) {
        return "/classes/" + content.code() + "/edit";
    }

    private ClassRevision current(String code) {
        return classes.current(code).orElseThrow(() -> new NotFoundException("locomotive class", code));
    }
}
