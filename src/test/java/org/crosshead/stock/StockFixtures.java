package org.crosshead.stock;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.traction.ValveFamily;
import org.crosshead.platform.Origin;
import org.crosshead.stock.LocomotiveClassDraft.ClassNote;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;

/** Stock of no railway that ever was. */
public final class StockFixtures {

    private StockFixtures() {}

    /** An invented six-coupled tender engine, every figure known. */
    public static LocomotiveClassDraft mixedTrafficClass() {
        return classOf(mixedTrafficFigures());
    }

    public static LocomotiveClassDraft classOf(List<SourcedFigure> figures) {
        return new LocomotiveClassDraft(
                "M6",
                "Mixed traffic 4-6-0",
                "Invented for tests",
                true,
                ValveFamily.LONG_TRAVEL,
                BrakeKind.STEAM,
                BrakeKind.VACUUM,
                figures,
                List.of(
                        new ClassNote(NoteTopic.STARTING, "Full gear, cocks open"),
                        new ClassNote(NoteTopic.DISLIKES, "<script>alert(1)</script>")));
    }

    public static List<SourcedFigure> mixedTrafficFigures() {
        return List.of(
                made("cylinder_count", 2, ""),
                made("cylinder_bore", 18.5, "in"),
                made("cylinder_stroke", 28, "in"),
                made("driving_wheel", 6, "ft"),
                made("boiler_pressure", 225, "psi"),
                made("full_gear_cutoff", 75, "%"),
                made("least_cutoff", 20, "%"),
                made("grate_area", 28, "sq ft"),
                made("heating_surface", 1600, "sq ft"),
                made("superheater_surface", 300, "sq ft"),
                made("boiler_water_full", 1000, "gal"),
                made("boiler_water_least", 850, "gal"),
                made("coal_calorific_value", 13000, "Btu/lb"),
                made("adhesive_weight", 54, "tons"),
                made("engine_weight", 72, "tons"),
                made("tender_weight_full", 53, "tons"),
                made("coupled_axles", 3, ""),
                made("axles", 8, ""),
                made("length", 63, "ft"),
                made("tank_capacity", 4000, "gal"),
                made("coal_capacity", 9, "tons"),
                made("engine_brake_force", 40, "tonf"),
                made("tender_brake_force", 20, "tonf"),
                made("max_speed", 75, "mph"));
    }

    public static SourcedFigure made(String key, double value, String unit) {
        return new SourcedFigure(key, value, unit, Origin.MAKERS, "invented drawing", true);
    }

    public static SourcedFigure unknown(String key, String unit) {
        return new SourcedFigure(key, null, unit, Origin.UNKNOWN, "drawing lost", true);
    }

    /** Returns the figures with one of them put in place of that of its key, or added. */
    public static List<SourcedFigure> with(List<SourcedFigure> figures, SourcedFigure figure) {
        List<SourcedFigure> changed = without(figures, figure.key());
        changed.add(figure);
        return changed;
    }

    public static List<SourcedFigure> without(List<SourcedFigure> figures, String key) {
        List<SourcedFigure> changed = new ArrayList<>(figures);
        changed.removeIf(figure -> figure.key().equals(key));
        return changed;
    }

    public static VehicleKindDraft coach(String code, BrakeKind brake) {
        return new VehicleKindDraft(
                code,
                "Invented bogie coach",
                ResistanceFamily.BOGIE_COACH,
                brake,
                Bearing.PLAIN,
                List.of(
                        made("tare", 30, "tons"),
                        made("load", 3, "tons"),
                        made("length", 60, "ft"),
                        made("axles", 4, ""),
                        made("brake_block_force", 21, "tonf")));
    }

    /** A vacuum-braked coach with these figures. */
    public static VehicleKindDraft kindOf(List<SourcedFigure> figures) {
        return new VehicleKindDraft(
                "COACH", "Invented bogie coach", ResistanceFamily.BOGIE_COACH, BrakeKind.VACUUM, figures);
    }

    public static VehicleKindDraft wagon() {
        return new VehicleKindDraft(
                "WAGON",
                "Invented open wagon",
                ResistanceFamily.FOUR_WHEEL_WAGON,
                BrakeKind.HAND,
                List.of(
                        made("tare", 7, "tons"),
                        made("load", 10, "tons"),
                        made("length", 20, "ft"),
                        made("axles", 2, "")));
    }

    public static FormationDraft.Item item(String kind, int count) {
        return new FormationDraft.Item(kind, count, null, "", true);
    }
}
