package org.crosshead.route.web;

import java.util.List;

/**
 * The form of a route as shown.
 *
 * @param action where it is sent
 * @param fresh whether a new route is entered
 */
record RouteFormPage(String action, boolean fresh, RouteForm form, List<FormProblem> problems) {

    RouteFormPage {
        problems = List.copyOf(problems);
    }

    public String typed(String field) {
        return form.typed(field);
    }

    public List<FormProblem> problemsOf(String field) {
        return problems.stream().filter(one -> one.field().equals(field)).toList();
    }

    /** Returns how many lines a text is shown with: what it holds and a few more, within reason. */
    public int rows(String field) {
        return Math.min(30, 4 + (int) typed(field).lines().count());
    }
}
