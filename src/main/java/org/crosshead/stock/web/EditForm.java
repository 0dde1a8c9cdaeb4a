package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.crosshead.stock.figure.Need;
import org.crosshead.stock.web.Words.FormProblem;

/**
 * What every form of these pages shows besides its own fields.
 *
 * @param action address to which it is sent
 * @param fresh whether it enters something new
 * @param basedOn number of the revision that it was filled from, 0 for something new
 * @param fields fields as typed, by name
 * @param problems what was wrong with it when it was sent
 */
record EditForm(
        String action,
        boolean fresh,
        int basedOn,
        Map<String, String> fields,
        List<FigureRow> figures,
        List<FormProblem> problems) {

    EditForm {
        fields = Map.copyOf(fields);
        figures = List.copyOf(figures);
        problems = List.copyOf(problems);
    }

    /** A form that enters something new. */
    static EditForm fresh(String action, Map<String, String> fields, List<FigureRow> figures) {
        return new EditForm(action, true, 0, fields, figures, List.of());
    }

    /** A form that changes the revision of this number. */
    static EditForm change(String action, int basedOn, Map<String, String> fields, List<FigureRow> figures) {
        return new EditForm(action, false, basedOn, fields, figures, List.of());
    }

    /** Returns the form as it goes back to who sent it. */
    EditForm refused(List<FormProblem> found) {
        return new EditForm(action, fresh, basedOn, fields, figures, found);
    }

    /** Returns what was typed into a field, or an empty text. */
    public String typed(String field) {
        return fields.getOrDefault(field, "");
    }

    /** Returns the id of a field: its name in letters that an address may hold. */
    public String id(String field) {
        return FormProblem.id(field);
    }

    /** Returns what is wrong with a field. */
    public List<FormProblem> problemsOf(String field) {
        return problems.stream()
                .filter(problem -> problem.field().equals(field))
                .toList();
    }

    /** Returns the figures by what they are for, in the order of the needs. */
    public SortedMap<Need, List<FigureRow>> figuresByNeed() {
        SortedMap<Need, List<FigureRow>> groups = new TreeMap<>();
        figures.forEach(row -> groups.computeIfAbsent(row.spec().need(), need -> new ArrayList<>())
                .add(row));
        return groups;
    }

    /** Returns whether anything is typed in these rows. */
    public boolean says(List<FigureRow> rows) {
        return rows.stream().anyMatch(FigureRow::says);
    }

    /** Returns the field that tells this thing from others of its kind. */
    String keyField() {
        return fields.containsKey("number") ? "number" : "code";
    }

    /** Returns the number of the revision that a sent form was filled from; what can't be read matches none. */
    static int basedOn(Map<String, String> fields) {
        return Numbers.whole(fields.getOrDefault("basedOn", "")).orElse(-1);
    }
}
