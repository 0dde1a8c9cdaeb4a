package org.crosshead.crew.web;

import java.util.List;
import org.crosshead.crew.PersonProblem;
import org.crosshead.crew.Post;

/**
 * What the page of one person shows.
 *
 * @param fresh whether nobody is stored yet, so that the staff number is typed too
 * @param mayEdit whether the reader may change it
 * @param depots that are known, to choose from
 */
record PersonPage(PersonForm form, boolean fresh, boolean mayEdit, List<PersonProblem> problems, List<String> depots) {

    PersonPage {
        problems = List.copyOf(problems);
        depots = List.copyOf(depots);
    }

    public List<PersonProblem> problemsOf(String field) {
        return problems.stream()
                .filter(problem -> problem.field().equals(field))
                .toList();
    }

    public boolean wrong(String field) {
        return !problemsOf(field).isEmpty();
    }

    public List<Post> allPosts() {
        return List.of(Post.values());
    }
}
