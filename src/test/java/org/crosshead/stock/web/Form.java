package org.crosshead.stock.web;

import java.util.HashMap;
import java.util.Map;

/** A form as a browser would send it. */
record Form(Map<String, String> fields) {

    Form {
        fields = Map.copyOf(fields);
    }

    /** Returns the form with one field typed over. */
    Form with(String name, String text) {
        Map<String, String> changed = new HashMap<>(fields);
        changed.put(name, text);
        return new Form(changed);
    }
}
