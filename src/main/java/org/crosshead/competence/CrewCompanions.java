package org.crosshead.competence;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.crosshead.crew.Post;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.CrewSlot;

/** Who of a train's crew goes along with another over which roads, and teaches what. */
final class CrewCompanions {

    private final TrainDraft train;
    private final TrainRoad road;
    private final Function<String, Optional<String>> classCode;
    private final ToLongFunction<String> personId;
    private final Map<Long, Set<Long>> accepted;
    private final Set<Long> inspectors;
    private final BiPredicate<Long, Subject> recognised;
    private final Piloting piloting;

    /**
     * @param classCode finds the class of an engine by its number
     * @param personId finds a person by their staff number
     * @param accepted whom each of the crew has accepted to conduct
     * @param inspectors who holds that post on the day
     * @param recognised whether somebody is recognised by a letter to teach something
     * @param piloting who may go along with whom
     */
    CrewCompanions(
            TrainDraft train,
            TrainRoad road,
            Function<String, Optional<String>> classCode,
            ToLongFunction<String> personId,
            Map<Long, Set<Long>> accepted,
            Set<Long> inspectors,
            BiPredicate<Long, Subject> recognised,
            Piloting piloting) {
        this.train = train;
        this.road = road;
        this.classCode = classCode;
        this.personId = personId;
        this.accepted = Map.copyOf(accepted);
        this.inspectors = Set.copyOf(inspectors);
        this.recognised = recognised;
        this.piloting = piloting;
    }

    /** Returns who else goes along, and over which sections: drivers, and whoever rides with the train. */
    List<PermitRules.Companion> all() {
        return train.crew().stream()
                .filter(slot -> slot.role() != Post.FIREMAN)
                .map(this::companion)
                .toList();
    }

    private PermitRules.Companion companion(CrewSlot slot) {
        long id = personId.applyAsLong(slot.staffNumber());
        boolean assigned = slot.role() == Post.DRIVER && piloting == Piloting.NOT_OF_THE_CREW;
        List<String> conducts = road.boards(slot) && !assigned
                ? road.whole(slot).stream().map(RouteSection::code).toList()
                : List.of();
        List<Subject> teaches = teaches(slot, id);
        return new PermitRules.Companion(
                id,
                conducts,
                teaches,
                accepted.getOrDefault(id, Set.of()),
                teaches.stream().filter(subject -> recognised.test(id, subject)).toList());
    }

    /** The sections whose named teacher goes along over all of them; an inspector in charge teaches the class of their engine. */
    private List<Subject> teaches(CrewSlot slot, Long id) {
        Stream<Subject> roads = road.whole(slot).stream()
                .filter(section -> id.equals(section.teacherId()))
                .map(CrewDuties::subject);
        boolean whole = slot.fromPlace() == null && slot.toPlace() == null;
        boolean inspector = slot.role() == Post.INSPECTOR && inspectors.contains(id);
        Stream<Subject> classes = whole && inspector ? CrewDuties.classOf(classCode, slot).stream() : Stream.empty();
        return Stream.concat(roads, classes).toList();
    }
}
