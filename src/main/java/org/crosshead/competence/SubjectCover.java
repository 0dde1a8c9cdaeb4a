package org.crosshead.competence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.springframework.stereotype.Component;

/** How many people could work each road and class, now and later if nothing is done. */
@Component
public class SubjectCover {

    private final Holdings holdings;
    private final People people;

    SubjectCover(Holdings holdings, People people) {
        this.holdings = holdings;
        this.people = people;
    }

    /**
     * How many hold something.
     *
     * @param holders on each of the days asked about
     */
    public record Cover(Subject subject, List<Long> holders) {

        public Cover {
            holders = List.copyOf(holders);
        }
    }

    /**
     * Returns the cover of each subject by those of a group who are in it on the day that is counted.
     *
     * @param day from which months are counted
     * @param months after it on which to count
     */
    public List<Cover> of(List<Subject> subjects, Group group, LocalDate day, List<Integer> months) {
        List<LocalDate> days = months.stream().map(day::plusMonths).toList();
        List<Map<Subject, Map<Long, Holding>>> held = holdings.everybody(subjects, days);
        List<Person> all = people.all();
        List<Set<Long>> there =
                days.stream().map(then -> group.members(all, then)).toList();
        List<Cover> covers = new ArrayList<>();
        for (Subject subject : subjects) {
            List<Long> holders = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                Set<Long> counted = there.get(i);
                holders.add(held.get(i).getOrDefault(subject, Map.of()).entrySet().stream()
                        .filter(one -> one.getValue().counts() && counted.contains(one.getKey()))
                        .count());
            }
            covers.add(new Cover(subject, holders));
        }
        return covers;
    }
}
