package org.crosshead.competence;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.crosshead.competence.PermitRules.Duty;
import org.crosshead.crew.Post;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.jspecify.annotations.Nullable;

/** What each of a train's crew must know: a driver the road of their stretch and the class, a fireman the class. */
final class CrewDuties {

    private final TrainDraft train;
    private final TrainRoad road;
    private final Function<String, Optional<String>> classCode;
    private final ToLongFunction<String> personId;
    private final Function<Post, List<Long>> others;
    private final Set<Subject> personal;
    private final Easy easy;

    /** Says whether the policy's exemption covers a stretch of a section, by the route's measure. */
    interface Easy {
        boolean covers(RouteSection section, double lowMeasure, double highMeasure);
    }

    /**
     * @param classCode finds the class of an engine by its number
     * @param personId finds a person by their staff number
     * @param others who holds a post and is not of this crew
     * @param personal what a driver must have besides road and engine
     * @param easy what needs not be held
     */
    CrewDuties(
            TrainDraft train,
            TrainRoad road,
            Function<String, Optional<String>> classCode,
            ToLongFunction<String> personId,
            Function<Post, List<Long>> others,
            Set<Subject> personal,
            Easy easy) {
        this.train = train;
        this.road = road;
        this.classCode = classCode;
        this.personId = personId;
        this.others = others;
        this.personal = Set.copyOf(personal);
        this.easy = easy;
    }

    List<PermitRules.Needs> needs() {
        List<PermitRules.Needs> needs = new ArrayList<>();
        for (CrewSlot slot : train.crew()) {
            List<Duty> duties = new ArrayList<>();
            if (slot.role() == Post.DRIVER) {
                personal.stream().sorted().forEach(subject -> duties.add(new Duty(subject, Set.of())));
                road.sections(slot)
                        .forEach(section -> duties.add(new Duty(
                                subject(section),
                                circumstances(road.isTenderFirst(slot, section)),
                                road.rides(section),
                                exempt(slot, section))));
            }
            if (slot.role() == Post.DRIVER || slot.role() == Post.FIREMAN) {
                classOf(classCode, slot)
                        .ifPresent(subject -> duties.add(new Duty(subject, circumstances(road.isTenderFirst(slot)))));
                needs.add(new PermitRules.Needs(
                        personId.applyAsLong(slot.staffNumber()), duties, others.apply(slot.role())));
            }
        }
        return needs;
    }

    private @Nullable Exemption exempt(CrewSlot slot, RouteSection section) {
        TrainRoad.Part part = road.part(slot, section);
        return easy.covers(section, part.lowMeasure(), part.highMeasure()) ? Exemption.EASY_GRADES : null;
    }

    private Set<Circumstance> circumstances(boolean tenderFirst) {
        Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
        if (train.dark()) {
            circumstances.add(Circumstance.DARK);
        }
        if (tenderFirst) {
            circumstances.add(Circumstance.TENDER_FIRST);
        }
        return circumstances;
    }

    static Subject subject(RouteSection section) {
        return new Subject(Subject.Kind.SECTION, section.code());
    }

    /** Returns the class of the engine on which one of the crew works. */
    static Optional<Subject> classOf(Function<String, Optional<String>> classCode, CrewSlot slot) {
        return classCode.apply(slot.engineNumber()).map(code -> new Subject(Subject.Kind.CLASS, code));
    }

    /** Returns what each driver must hold where the train may be diverted. */
    List<PermitRules.Needs> detours(List<TrainDraft.Leg> legs) {
        List<Duty> duties = legs.stream()
                .flatMap(leg -> road.over(leg).stream())
                .distinct()
                .map(section -> new Duty(subject(section), circumstances(false)))
                .toList();
        return duties.isEmpty()
                ? List.of()
                : train.crew().stream()
                        .filter(slot -> slot.role() == Post.DRIVER)
                        .map(slot -> personId.applyAsLong(slot.staffNumber()))
                        .distinct()
                        .map(person -> new PermitRules.Needs(person, duties, List.of()))
                        .toList();
    }
}
