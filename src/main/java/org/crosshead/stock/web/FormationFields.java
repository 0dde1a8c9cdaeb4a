package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.StockProblem;

/** The vehicles of a formation as fields of a form, a row an item. */
final class FormationFields {

    private static final List<String> FIELDS =
            List.of("vehicleKindCode", "count", "loadTons", "vehicleNumber", "brakeCutOut");
    private static final int ROWS_MORE = 5;
    /** As many rows as a formation may have vehicles. */
    private static final int ROWS_MAX = 200;

    private FormationFields() {}

    static Map<String, String> of(List<FormationDraft.Item> items) {
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < items.size(); i++) {
            FormationDraft.Item item = items.get(i);
            Double load = item.loadTons();
            fields.put(name(i, "vehicleKindCode"), item.vehicleKindCode());
            fields.put(name(i, "count"), Integer.toString(item.count()));
            fields.put(name(i, "loadTons"), load == null ? "" : Numbers.typed(load));
            fields.put(name(i, "vehicleNumber"), item.vehicleNumber());
            if (!item.brakeWorking()) {
                fields.put(name(i, "brakeCutOut"), "true");
            }
        }
        return fields;
    }

    /** Returns the fields with empty rows closed up, so that a row and the item it becomes have one number. */
    static Map<String, String> closedUp(Map<String, String> fields) {
        Map<String, String> closed = new HashMap<>(fields);
        int next = 0;
        for (int i = 0; i < ROWS_MAX; i++) {
            boolean filled = filled(fields, i);
            for (String field : FIELDS) {
                closed.remove(name(i, field));
                String typed = fields.get(name(i, field));
                if (filled && typed != null) {
                    closed.put(name(next, field), typed);
                }
            }
            next += filled ? 1 : 0;
        }
        return closed;
    }

    /** Returns how many rows the form shows: those filled, and some more. */
    static int rows(Map<String, String> fields) {
        return Math.min(ROWS_MAX, filledRows(fields) + ROWS_MORE);
    }

    /**
     * Returns the items of the filled rows, which stand first.
     *
     * @param problems takes what can't be read, under the field's own row
     */
    static List<FormationDraft.Item> items(Map<String, String> fields, List<StockProblem> problems) {
        List<FormationDraft.Item> items = new ArrayList<>();
        int rows = filledRows(fields);
        for (int i = 0; i < rows; i++) {
            items.add(item(fields, i, problems));
        }
        return items;
    }

    private static FormationDraft.Item item(Map<String, String> fields, int row, List<StockProblem> problems) {
        String kind = Fields.text(fields, name(row, "vehicleKindCode"));
        String count = Fields.text(fields, name(row, "count"));
        String load = Fields.text(fields, name(row, "loadTons"));
        Optional<Integer> vehicles = Numbers.whole(count);
        Optional<Double> loadTons = Numbers.decimal(load);
        if (kind.isEmpty()) {
            problems.add(new StockProblem(name(row, "vehicleKindCode"), "stock.refused.kind-needed", List.of()));
        }
        if (vehicles.isEmpty()) {
            problems.add(new StockProblem(name(row, "count"), "stock.refused.not-a-whole-number", List.of(count)));
        }
        if (loadTons.isEmpty() && !load.isEmpty()) {
            problems.add(new StockProblem(name(row, "loadTons"), "stock.refused.not-a-number", List.of(load)));
        }
        return new FormationDraft.Item(
                kind,
                vehicles.orElse(0),
                loadTons.orElse(null),
                Fields.text(fields, name(row, "vehicleNumber")),
                !fields.containsKey(name(row, "brakeCutOut")));
    }

    private static int filledRows(Map<String, String> fields) {
        int rows = 0;
        while (rows < ROWS_MAX && filled(fields, rows)) {
            rows++;
        }
        return rows;
    }

    private static boolean filled(Map<String, String> fields, int row) {
        return FIELDS.stream()
                .anyMatch(field -> !Fields.text(fields, name(row, field)).isEmpty());
    }

    private static String name(int row, String field) {
        return "items[" + row + "]." + field;
    }
}
