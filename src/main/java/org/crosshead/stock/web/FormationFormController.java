package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.Formations;
import org.crosshead.stock.StockProblem;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Form by which a formation is entered, as a copy of another where wanted, or changed. */
@Controller
class FormationFormController {

    private static final String NEW = "/formations/new";

    private final Formations formations;
    private final VehicleKinds kinds;
    private final Words words;

    FormationFormController(Formations formations, VehicleKinds kinds, Words words) {
        this.formations = formations;
        this.kinds = kinds;
        this.words = words;
    }

    @GetMapping(NEW)
    String enter(@RequestParam(defaultValue = "") String from, Model model) {
        Map<String, String> fields =
                formations.current(from).map(copied -> fields(copied.content())).orElseGet(HashMap::new);
        fields.put("code", "");
        fields.put("reason", words.of("stock.form.first-entry"));
        return page(EditForm.fresh(NEW, fields, List.of()), model);
    }

    @GetMapping("/formations/{code}/edit")
    String change(@PathVariable String code, Model model) {
        FormationRevision current = current(code);
        FormationDraft content = current.content();
        return page(EditForm.change(action(content), current.number(), fields(content), List.of()), model);
    }

    @PostMapping(NEW)
    String create(@RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        return store(EditForm.fresh(NEW, FormationFields.closedUp(fields), List.of()), model, next);
    }

    @PostMapping("/formations/{code}/edit")
    String revise(
            @PathVariable String code, @RequestParam Map<String, String> fields, Model model, RedirectAttributes next) {
        FormationDraft content = current(code).content();
        EditForm form = EditForm.change(
                action(content),
                EditForm.basedOn(fields),
                Fields.with(FormationFields.closedUp(fields), "code", content.code()),
                List.of());
        return store(form, model, next);
    }

    private String store(EditForm form, Model model, RedirectAttributes next) {
        List<StockProblem> unreadable = new ArrayList<>();
        FormationDraft draft = new FormationDraft(
                Fields.text(form.fields(), "code"),
                Fields.text(form.fields(), "name"),
                FormationFields.items(form.fields(), unreadable));
        List<FormProblem> problems = Submission.send(
                form,
                unreadable,
                words,
                () -> formations.enter(draft, Fields.text(form.fields(), "reason"), form.basedOn()));
        return problems.isEmpty()
                ? Submission.done("stored", "/formations/" + draft.code(), next)
                : page(form.refused(problems), model);
    }

    private static Map<String, String> fields(FormationDraft content) {
        Map<String, String> fields = new HashMap<>(FormationFields.of(content.items()));
        fields.put("code", content.code());
        fields.put("name", content.name());
        return fields;
    }

    private String page(EditForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute(
                "kinds", kinds.all().stream().map(VehicleKindRevision::content).toList());
        model.addAttribute("itemRows", FormationFields.rows(form.fields()));
        return "stock/formation-edit";
    }

    private static String action(FormationDraft content) {
        return "/formations/" + content.code() + "/edit";
    }

    private FormationRevision current(String code) {
        return formations.current(code).orElseThrow(() -> new NotFoundException("formation", code));
    }
}
