package org.crosshead.competence;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.crosshead.crew.Post;
import org.crosshead.route.Direction;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.stock.Engines;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.jspecify.annotations.Nullable;

/** What each of a train's crew must know: a driver the road of their stretch and the class, a fireman the class. */
final class CrewDuties {

    private static final double CLOSE = 1e-6;

    private final TrainDraft train;
    private final List<RouteSection> sections;
    private final Engines engines;
    private final ToLongFunction<String> personId;
    private final Function<Post, List<Long>> others;

    /**
     * @param sections all that are laid down
     * @param personId finds a person by their staff number
     * @param others who holds a post and is not of this crew
     */
    CrewDuties(
            TrainDraft train,
            List<RouteSection> sections,
            Engines engines,
            ToLongFunction<String> personId,
            Function<Post, List<Long>> others) {
        this.others = others;
        this.train = train;
        this.sections = sections;
        this.engines = engines;
        this.personId = personId;
    }

    List<PermitRules.Needs> needs() {
        List<PermitRules.Needs> needs = new ArrayList<>();
        for (CrewSlot slot : train.crew()) {
            List<Subject> subjects = new ArrayList<>();
            if (slot.role() == Post.DRIVER) {
                sections(slot).forEach(section -> subjects.add(new Subject(Subject.Kind.SECTION, section.code())));
            }
            if (slot.role() == Post.DRIVER || slot.role() == Post.FIREMAN) {
                engines.current(slot.engineNumber())
                        .ifPresent(engine -> subjects.add(
                                new Subject(Subject.Kind.CLASS, engine.content().classCode())));
                needs.add(new PermitRules.Needs(
                        personId.applyAsLong(slot.staffNumber()), subjects, others.apply(slot.role())));
            }
        }
        return needs;
    }

    /** Returns who else goes along, and over which sections: drivers, inspectors and assessors of the crew. */
    List<PermitRules.Companion> companions() {
        return train.crew().stream()
                .filter(slot -> slot.role() != Post.FIREMAN)
                .map(slot -> new PermitRules.Companion(
                        personId.applyAsLong(slot.staffNumber()),
                        whole(slot).stream().map(RouteSection::code).toList()))
                .toList();
    }

    /** Returns the stretches of the path that no section covers. */
    List<Permit.Gap> gaps() {
        List<Permit.Gap> gaps = new ArrayList<>();
        for (Stretch stretch : stretches(null, null)) {
            double length = Math.abs(stretch.toMeasure() - stretch.fromMeasure());
            double covered = over(stretch).stream()
                    .mapToDouble(section -> section.covers(stretch.low(), stretch.high()))
                    .sum();
            if (covered < length - CLOSE) {
                gaps.add(new Permit.Gap(stretch.routeCode(), stretch.fromMeasure(), stretch.toMeasure()));
            }
        }
        return gaps;
    }

    private List<RouteSection> sections(CrewSlot slot) {
        return stretches(slot.fromPlace(), slot.toPlace()).stream()
                .flatMap(stretch -> over(stretch).stream())
                .distinct()
                .toList();
    }

    /** Returns the sections of which somebody goes along over all that the train runs of them. */
    private List<RouteSection> whole(CrewSlot slot) {
        List<Stretch> along = stretches(slot.fromPlace(), slot.toPlace());
        List<Stretch> all = stretches(null, null);
        return sections(slot).stream()
                .filter(section -> run(section, along) >= run(section, all) - CLOSE)
                .toList();
    }

    private static double run(RouteSection section, List<Stretch> stretches) {
        return stretches.stream()
                .filter(stretch ->
                        stretch.routeCode().equals(section.routeCode()) && stretch.direction() == section.direction())
                .mapToDouble(stretch -> section.covers(stretch.low(), stretch.high()))
                .sum();
    }

    private List<RouteSection> over(Stretch stretch) {
        return RouteSection.over(
                sections, stretch.routeCode(), stretch.direction(), stretch.fromMeasure(), stretch.toMeasure());
    }

    private record Stretch(String routeCode, Direction direction, double fromMeasure, double toMeasure) {

        double low() {
            return Math.min(fromMeasure, toMeasure);
        }

        double high() {
            return Math.max(fromMeasure, toMeasure);
        }
    }

    /** Returns what is run between two calls, leg by leg; the whole path where they are null or not calls. */
    private List<Stretch> stretches(@Nullable String fromPlace, @Nullable String toPlace) {
        Call from = call(fromPlace);
        Call to = call(toPlace);
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < train.legs().size(); i++) {
            TrainDraft.Leg leg = train.legs().get(i);
            int number = i + 1;
            boolean within = (from == null || number >= from.legNumber()) && (to == null || number <= to.legNumber());
            double begins = from != null && number == from.legNumber() ? from.atMeasure() : leg.fromMeasure();
            double ends = to != null && number == to.legNumber() ? to.atMeasure() : leg.toMeasure();
            if (within && Math.abs(ends - begins) > CLOSE) {
                stretches.add(new Stretch(leg.routeCode(), leg.direction(), begins, ends));
            }
        }
        return stretches;
    }

    private @Nullable Call call(@Nullable String place) {
        return train.calls().stream()
                .filter(call -> call.place().equals(place))
                .findFirst()
                .orElse(null);
    }
}
