package org.crosshead.working;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor;
import org.springframework.stereotype.Component;

/** Which trains a person may see: crew those that they work, everybody else all. */
@Component
public class OwnTrains {

    private static final Set<String> SEE_ALL = Set.of("INSPECTOR", "MANAGER", "ASSESSOR", "ADMINISTRATOR");

    private final CurrentActor actor;
    private final People people;

    OwnTrains(CurrentActor actor, People people) {
        this.actor = actor;
        this.people = people;
    }

    public boolean isVisible(Train train) {
        return seesAll()
                || staffNumber()
                        .map(number -> train.content().crew().stream()
                                .anyMatch(slot -> slot.staffNumber().equals(number)))
                        .orElse(false);
    }

    public List<TrainSummary> visible(List<TrainSummary> trains) {
        if (seesAll()) {
            return trains;
        }
        Optional<String> number = staffNumber();
        return trains.stream()
                .filter(train -> number.isPresent() && train.staffNumbers().contains(number.get()))
                .toList();
    }

    /** Returns the staff number of the person who is logged in, if the log-in belongs to a person. */
    public Optional<String> staffNumber() {
        Long personId = actor.get().personId();
        return personId == null ? Optional.empty() : people.find(personId).map(Person::staffNumber);
    }

    /** Returns true for a post that sees every train and what is only prepared. */
    public boolean seesAll() {
        CurrentActor.Actor who = actor.get();
        return who.posts().stream().anyMatch(SEE_ALL::contains);
    }
}
