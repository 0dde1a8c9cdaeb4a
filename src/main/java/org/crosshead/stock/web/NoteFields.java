package org.crosshead.stock.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.stock.LocomotiveClassDraft.ClassNote;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;

/** The notes of a class as fields of a form, a row a note. */
final class NoteFields {

    private static final int ROWS_MORE = 3;
    /** More notes than a crew would read. */
    private static final int ROWS_MAX = 200;

    private NoteFields() {}

    static Map<String, String> of(List<ClassNote> notes) {
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < notes.size(); i++) {
            fields.put(name(i, "topic"), notes.get(i).topic().name());
            fields.put(name(i, "text"), notes.get(i).text());
        }
        return fields;
    }

    /** Returns the notes of the rows with a text. */
    static List<ClassNote> notes(Map<String, String> fields) {
        List<ClassNote> notes = new ArrayList<>();
        for (int i = 0; i < ROWS_MAX; i++) {
            String text = Fields.text(fields, name(i, "text"));
            if (!text.isEmpty()) {
                notes.add(new ClassNote(Fields.choice(fields, name(i, "topic"), NoteTopic.CONTROLS), text));
            }
        }
        return notes;
    }

    /** Returns the fields with empty rows closed up, so that a row and the note it becomes have one number. */
    static Map<String, String> closedUp(Map<String, String> fields) {
        Map<String, String> closed = new HashMap<>(fields);
        closed.keySet().removeIf(name -> name.startsWith("notes["));
        closed.putAll(of(notes(fields)));
        return closed;
    }

    /** Returns how many rows the form shows: those filled, and some more. */
    static int rows(Map<String, String> fields) {
        return Math.min(ROWS_MAX, notes(fields).size() + ROWS_MORE);
    }

    private static String name(int row, String field) {
        return "notes[" + row + "]." + field;
    }
}
