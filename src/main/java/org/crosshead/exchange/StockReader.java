package org.crosshead.exchange;

import java.util.List;
import java.util.Map;
import org.crosshead.exchange.Sheets.Owned;
import org.crosshead.exchange.Sheets.Owners;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.platform.Origin;
import org.crosshead.stock.Bearing;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClassDraft.ClassNote;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.VehicleKindDraft;

/** Reads classes, engines, kinds of vehicle and formations with their figures. */
final class StockReader {

    private final Sheets sheets;
    private final ProblemList problems;

    StockReader(Sheets sheets, ProblemList problems) {
        this.sheets = sheets;
        this.problems = problems;
    }

    ImportPlan.Stock stock() {
        return new ImportPlan.Stock(classes(), engines(), kinds(), formations());
    }

    private List<Located<LocomotiveClassDraft>> classes() {
        Owners owners = owners(ImportFile.CLASSES, "code");
        Map<String, List<Line>> figures = owned(ImportFile.CLASS_FIGURES, "class_code", owners);
        Map<String, List<Line>> notes = owned(ImportFile.CLASS_NOTES, "class_code", owners);
        return sheets.lines(ImportFile.CLASSES).stream()
                .map(line -> classOf(line, of(figures, line, "code"), of(notes, line, "code")))
                .toList();
    }

    private static Located<LocomotiveClassDraft> classOf(Line line, List<Line> figures, List<Line> notes) {
        Parts parts = new Parts();
        LocomotiveClassDraft draft = new LocomotiveClassDraft(
                line.text("code"),
                line.text("name"),
                line.text("description"),
                line.yes("tender_engine"),
                line.word("valve_family", ValveFamily.class),
                line.word("engine_brake", BrakeKind.class),
                line.word("train_brake", BrakeKind.class),
                figures(parts, figures),
                parts.list(
                        "notes", notes, note -> new ClassNote(note.word("topic", NoteTopic.class), note.text("text"))));
        return new Located<>(draft, line, parts.byPath());
    }

    private List<Located<EngineDraft>> engines() {
        Owners owners = owners(ImportFile.ENGINES, "number");
        Map<String, List<Line>> figures = owned(ImportFile.ENGINE_FIGURES, "engine_number", owners);
        return sheets.lines(ImportFile.ENGINES).stream()
                .map(line -> {
                    Parts parts = new Parts();
                    EngineDraft draft = new EngineDraft(
                            line.text("number"),
                            line.text("name"),
                            line.text("class_code"),
                            line.text("remarks"),
                            figures(parts, of(figures, line, "number")));
                    return new Located<>(draft, line, parts.byPath());
                })
                .toList();
    }

    private List<Located<VehicleKindDraft>> kinds() {
        Owners owners = owners(ImportFile.VEHICLE_KINDS, "code");
        Map<String, List<Line>> figures = owned(ImportFile.VEHICLE_FIGURES, "kind_code", owners);
        return sheets.lines(ImportFile.VEHICLE_KINDS).stream()
                .map(line -> {
                    Parts parts = new Parts();
                    VehicleKindDraft draft = new VehicleKindDraft(
                            line.text("code"),
                            line.text("name"),
                            line.word("family", ResistanceFamily.class),
                            line.word("brake", BrakeKind.class),
                            line.word("bearing", Bearing.class),
                            figures(parts, of(figures, line, "code")));
                    return new Located<>(draft, line, parts.byPath());
                })
                .toList();
    }

    private List<Located<FormationDraft>> formations() {
        Owners owners = owners(ImportFile.FORMATIONS, "code");
        Map<String, List<Line>> items = owned(ImportFile.FORMATION_ITEMS, "formation_code", owners);
        return sheets.lines(ImportFile.FORMATIONS).stream()
                .map(line -> {
                    Parts parts = new Parts();
                    FormationDraft draft = new FormationDraft(
                            line.text("code"),
                            line.text("name"),
                            parts.list("items", of(items, line, "code"), StockReader::item));
                    return new Located<>(draft, line, parts.byPath());
                })
                .toList();
    }

    private static FormationDraft.Item item(Line line) {
        return new FormationDraft.Item(
                line.text("vehicle_kind_code"),
                line.whole("count"),
                line.numberOrNull("load_tons"),
                line.text("vehicle_number"),
                line.yes("brake_working"));
    }

    private static List<SourcedFigure> figures(Parts parts, List<Line> lines) {
        return parts.named(
                "figures",
                "key",
                lines,
                line -> new SourcedFigure(
                        line.text("key"),
                        line.numberOrNull("value"),
                        line.text("unit"),
                        line.word("origin", Origin.class),
                        line.text("note"),
                        line.yes("accepted")));
    }

    private Owners owners(ImportFile file, String column) {
        return Owners.of(sheets, Owned.by(file, column), problems);
    }

    private Map<String, List<Line>> owned(ImportFile file, String column, Owners owners) {
        return sheets.lines(Owned.by(file, column), owners, problems);
    }

    private static List<Line> of(Map<String, List<Line>> lines, Line owner, String column) {
        return lines.getOrDefault(owner.text(column), List.of());
    }
}
