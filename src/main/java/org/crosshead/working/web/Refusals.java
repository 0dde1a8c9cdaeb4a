package org.crosshead.working.web;

import java.util.List;

/** What was wrong with a form, in words. */
record Refusals(List<Refusal> all) {

    static final Refusals NONE = new Refusals(List.of());

    Refusals {
        all = List.copyOf(all);
    }

    /**
     * One thing that is wrong.
     *
     * @param id id of the field that it stands beside
     * @param label what that field is called
     */
    record Refusal(String id, String label, String text) {}

    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** Returns the words beside the field of this name. */
    public List<String> of(String name) {
        String id = id(name);
        return all.stream()
                .filter(refusal -> refusal.id().equals(id))
                .map(Refusal::text)
                .toList();
    }

    /** Returns the id of a field: its name in letters that an address may hold. */
    public static String id(String name) {
        return name.replaceAll("[\\[\\].]+", "-");
    }
}
