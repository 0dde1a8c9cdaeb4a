package org.crosshead.route.web;

import java.util.List;
import org.crosshead.route.RouteSummary;

/** The form of a temporary restriction as shown. */
record RestrictionFormPage(RestrictionForm form, List<RouteSummary> routes, List<FormProblem> problems) {

    RestrictionFormPage {
        routes = List.copyOf(routes);
        problems = List.copyOf(problems);
    }

    public String typed(String field) {
        return form.typed(field);
    }

    public List<FormProblem> problemsOf(String field) {
        return problems.stream().filter(one -> one.field().equals(field)).toList();
    }
}
