package org.crosshead.stock.web;

import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.crosshead.platform.NotFoundException;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.Formations;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.VehicleKindDraft;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Shows formations with their totals. */
@Controller
class FormationController {

    private final Formations formations;
    private final VehicleKinds kinds;
    private final Words words;

    FormationController(Formations formations, VehicleKinds kinds, Words words) {
        this.formations = formations;
        this.kinds = kinds;
        this.words = words;
    }

    /**
     * A formation in the list.
     *
     * @param page its totals, or null while a figure is missing
     * @param lacking how many figures are missing
     */
    record FormationLine(
            String code,
            String name,
            int vehicles,
            @Nullable FormationPage page,
            int lacking) {}

    /** Some vehicles of one kind in a formation; the load is empty where it is as its kind's. */
    record ItemLine(
            int count,
            String kindCode,
            String kindName,
            String number,
            String loadTons,
            BrakeKind brake,
            boolean brakeWorking) {}

    @GetMapping("/formations")
    String list(Model model) {
        Map<String, VehicleKindRevision> byCode = kindsByCode();
        model.addAttribute(
                "formations",
                formations.all().stream()
                        .map(revision -> line(revision.content(), byCode))
                        .toList());
        return "stock/formations";
    }

    @GetMapping("/formations/{code}")
    String show(@PathVariable String code, Model model) {
        FormationRevision revision =
                formations.current(code).orElseThrow(() -> new NotFoundException("formation", code));
        Map<String, VehicleKindRevision> byCode = kindsByCode();
        FormationFigures figures = figures(revision.content(), byCode);
        model.addAttribute("revision", revision);
        model.addAttribute("madeOn", words.day(revision.madeAt()));
        model.addAttribute("kinds", byCode);
        model.addAttribute(
                "items",
                revision.content().items().stream()
                        .map(item -> item(item, byCode))
                        .toList());
        model.addAttribute("warnings", words.of(StockModel.warnings(revision.content(), byCode)));
        if (figures instanceof FormationFigures.Resolved known) {
            model.addAttribute("page", FormationPage.of(known));
            model.addAttribute("estimates", known.estimates());
        } else if (figures instanceof FormationFigures.Missing lacking) {
            model.addAttribute("missing", LackingFigure.of(lacking.missing()));
        }
        return "stock/formation";
    }

    private static FormationLine line(FormationDraft content, Map<String, VehicleKindRevision> byCode) {
        FormationFigures figures = figures(content, byCode);
        return new FormationLine(
                content.code(),
                content.name(),
                content.items().stream().mapToInt(FormationDraft.Item::count).sum(),
                figures instanceof FormationFigures.Resolved known ? FormationPage.of(known) : null,
                figures instanceof FormationFigures.Missing lacking
                        ? lacking.missing().size()
                        : 0);
    }

    private static ItemLine item(FormationDraft.Item item, Map<String, VehicleKindRevision> byCode) {
        VehicleKindDraft kind =
                Objects.requireNonNull(byCode.get(item.vehicleKindCode())).content();
        Double load = item.loadTons();
        return new ItemLine(
                item.count(),
                kind.code(),
                kind.name(),
                item.vehicleNumber(),
                load == null ? "" : Numbers.shown(load),
                kind.brake(),
                item.brakeWorking());
    }

    private static FormationFigures figures(FormationDraft content, Map<String, VehicleKindRevision> byCode) {
        return StockModel.formation(content, byCode, StockModel.trainBrake(content, byCode));
    }

    private Map<String, VehicleKindRevision> kindsByCode() {
        return kinds.all().stream()
                .collect(Collectors.toMap(kind -> kind.content().code(), kind -> kind));
    }
}
