package org.crosshead.competence.web;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.crew.Person;
import org.jspecify.annotations.Nullable;

/** Finds the names of people by their ids. */
public final class Names {

    private final Map<Long, Person> people;

    Names(List<Person> people) {
        this.people = people.stream().collect(Collectors.toMap(Person::id, Function.identity()));
    }

    /** Returns name and staff number; a dash where nobody is meant. */
    public String of(@Nullable Long id) {
        Person person = id == null ? null : people.get(id);
        return person == null ? "\u2013" : person.name() + " (" + person.staffNumber() + ")";
    }

    public String staffNumber(Long id) {
        Person person = people.get(id);
        return person == null ? "" : person.staffNumber();
    }
}
