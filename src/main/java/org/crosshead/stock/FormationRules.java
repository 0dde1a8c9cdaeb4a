package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Checks a formation: its texts, its length in vehicles, and each of its items. */
final class FormationRules {

    /** More vehicles than any train of this service has. */
    static final int VEHICLES_MAX = 200;

    private static final double LOAD_MAX_TONS = 150;
    private static final int NUMBER_LENGTH_MAX = 40;

    private final List<StockProblem> problems;
    private final Predicate<String> kindExists;

    private FormationRules(List<StockProblem> texts, Predicate<String> kindExists) {
        this.problems = new ArrayList<>(texts);
        this.kindExists = kindExists;
    }

    static List<StockProblem> problems(FormationDraft draft, String reason, Predicate<String> kindExists) {
        TextRules texts = TextRules.with(reason)
                .code("code", draft.code())
                .needed("name", draft.name(), TextRules.NAME_LENGTH_MAX);
        FormationRules rules = new FormationRules(texts.problems(), kindExists);
        rules.vehicles(draft);
        for (int i = 0; i < draft.items().size(); i++) {
            rules.item(draft.items().get(i), "items[" + i + "].");
        }
        return rules.problems;
    }

    private void vehicles(FormationDraft draft) {
        long vehicles = draft.items().stream()
                .mapToLong(item -> Math.max(0, item.count()))
                .sum();
        if (draft.items().isEmpty()) {
            problems.add(refused("items", "no-vehicles"));
        }
        if (vehicles > VEHICLES_MAX) {
            problems.add(refused("items", "too-many-vehicles", vehicles, VEHICLES_MAX));
        }
    }

    private void item(FormationDraft.Item item, String field) {
        if (!kindExists.test(item.vehicleKindCode())) {
            problems.add(refused(field + "vehicleKindCode", "kind-unknown", item.vehicleKindCode()));
        }
        if (item.count() < 1) {
            problems.add(refused(field + "count", "count-below-one", item.count()));
        }
        if (!item.vehicleNumber().isEmpty() && item.count() != 1) {
            problems.add(refused(field + "vehicleNumber", "number-needs-count-one", item.vehicleNumber()));
        }
        if (item.vehicleNumber().length() > NUMBER_LENGTH_MAX) {
            problems.add(refused(field + "vehicleNumber", "too-long", NUMBER_LENGTH_MAX));
        }
        Double load = item.loadTons();
        if (load != null && !(load >= 0 && load <= LOAD_MAX_TONS)) {
            problems.add(refused(field + "loadTons", "out-of-range", load, "tons", 0, LOAD_MAX_TONS));
        }
    }
}
