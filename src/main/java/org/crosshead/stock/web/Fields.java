package org.crosshead.stock.web;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Reads single fields of a sent form. */
final class Fields {

    private Fields() {}

    static String text(Map<String, String> fields, String name) {
        return fields.getOrDefault(name, "").trim();
    }

    /** Returns the fields with one of them set. */
    static Map<String, String> with(Map<String, String> fields, String name, String text) {
        Map<String, String> changed = new HashMap<>(fields);
        changed.put(name, text);
        return changed;
    }

    /** Returns the choice of this name; a name that is none, which no form offers, gives {@code otherwise}. */
    static <E extends Enum<E>> E choice(Map<String, String> fields, String name, E otherwise) {
        return Arrays.stream(otherwise.getDeclaringClass().getEnumConstants())
                .filter(choice -> choice.name().equals(fields.get(name)))
                .findFirst()
                .orElse(otherwise);
    }
}
