package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.Bearing;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.StockProblem;
import org.crosshead.stock.VehicleKindDraft;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.stock.figure.VehicleFigure;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Form by which a kind of vehicle is entered, as a copy of another where wanted, or changed. */
@Controller
class VehicleKindFormController {

    private static final String NEW = "/vehicles/new";

    private final VehicleKinds kinds;
    private final Words words;

    VehicleKindFormController(VehicleKinds kinds, Words words) {
        this.kinds = kinds;
        this.words = words;
    }

    @GetMapping(NEW)
    String enter(@RequestParam(defaultValue = "") String from, Model model) {
        VehicleKindDraft filled = kinds.current(from)
                .map(VehicleKindRevision::content)
                .orElse(new VehicleKindDraft("", "", ResistanceFamily.BOGIE_COACH, BrakeKind.VACUUM, List.of()));
        Map<String, String> fields = fields(filled);
        fields.put("code", "");
        fields.put("reason", words.of("stock.form.first-entry"));
        return page(EditForm.fresh(NEW, fields, FigureRow.filled(VehicleFigure.values(), filled.figures())), model);
    }

    @GetMapping("/vehicles/{code}/edit")
    String change(@PathVariable String code, Model model) {
        VehicleKindRevision current = current(code);
        VehicleKindDraft content = current.content();
        List<FigureRow> rows = FigureRow.filled(VehicleFigure.values(), content.figures());
        return page(EditForm.change(action(content), current.number(), fields(content), rows), model);
    }

    @PostMapping(NEW)
    String create(@RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        EditForm form = EditForm.fresh(NEW, fields, FigureRow.typed(VehicleFigure.values(), fields));
        return store(form, List.of(), model, next);
    }

    @PostMapping("/vehicles/{code}/edit")
    String revise(
            @PathVariable String code, @RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        VehicleKindDraft content = current(code).content();
        EditForm form = EditForm.change(
                action(content),
                EditForm.basedOn(fields),
                Fields.with(fields, "code", content.code()),
                FigureRow.typed(VehicleFigure.values(), fields));
        return store(form, content.figures(), model, next);
    }

    private String store(EditForm form, List<SourcedFigure> before, Model model, RedirectAttributes next) {
        List<StockProblem> unreadable = new ArrayList<>();
        VehicleKindDraft draft = new VehicleKindDraft(
                Fields.text(form.fields(), "code"),
                Fields.text(form.fields(), "name"),
                Fields.choice(form.fields(), "family", ResistanceFamily.LOCOMOTIVE),
                Fields.choice(form.fields(), "brake", BrakeKind.NONE),
                Fields.choice(form.fields(), "bearing", Bearing.UNKNOWN),
                FigureRow.figures(form.figures(), before, unreadable));
        List<FormProblem> problems = Submission.send(
                form,
                unreadable,
                words,
                () -> kinds.enter(draft, Fields.text(form.fields(), "reason"), form.basedOn()));
        return problems.isEmpty()
                ? Submission.done("stored", "/vehicles/" + draft.code(), next)
                : page(form.refused(problems), model);
    }

    private static Map<String, String> fields(VehicleKindDraft content) {
        return new HashMap<>(Map.of(
                "code", content.code(),
                "name", content.name(),
                "family", content.family().name(),
                "brake", content.brake().name(),
                "bearing", content.bearing().name()));
    }

    private static String page(EditForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute(
                "families",
                Arrays.stream(ResistanceFamily.values())
                        .filter(family -> family != ResistanceFamily.LOCOMOTIVE && family != ResistanceFamily.TENDER)
                        .toList());
        model.addAttribute(
                "brakes",
                Arrays.stream(BrakeKind.values())
                        .filter(brake -> brake != BrakeKind.STEAM)
                        .toList());
        model.addAttribute("bearings", Bearing.values());
        return "stock/vehicle-edit";
    }

    private static String action(VehicleKindDraft content) {
        return "/vehicles/" + content.code() + "/edit";
    }

    private VehicleKindRevision current(String code) {
        return kinds.current(code).orElseThrow(() -> new NotFoundException("vehicle", code));
    }
}
