package org.crosshead.competence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.crosshead.competence.PermitRules.Duty;
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
    private final Set<Subject> personal;
    private final Map<Long, Set<Long>> accepted;
    private final BiPredicate<Long, Subject> recognised;
    private final Set<Long> inspectors;

    /**
     * @param sections all that are laid down
     * @param personId finds a person by their staff number
     * @param others who holds a post and is not of this crew
     * @param personal what a driver must have besides road and engine
     * @param accepted whom each of the crew has accepted to conduct
     * @param inspectors who holds that post on the day
     * @param recognised whether somebody is recognised by a letter to teach something
     */
    CrewDuties(
            TrainDraft train,
            List<RouteSection> sections,
            Engines engines,
            ToLongFunction<String> personId,
            Function<Post, List<Long>> others,
            Set<Subject> personal,
            Map<Long, Set<Long>> accepted,
            Set<Long> inspectors,
            BiPredicate<Long, Subject> recognised) {
        this.inspectors = Set.copyOf(inspectors);
        this.recognised = recognised;
        this.accepted = Map.copyOf(accepted);
        this.personal = Set.copyOf(personal);
        this.others = others;
        this.train = train;
        this.sections = sections;
        this.engines = engines;
        this.personId = personId;
    }

    List<PermitRules.Needs> needs() {
        List<PermitRules.Needs> needs = new ArrayList<>();
        for (CrewSlot slot : train.crew()) {
            List<Duty> duties = new ArrayList<>();
            if (slot.role() == Post.DRIVER) {
                personal.stream().sorted().forEach(subject -> duties.add(new Duty(subject, Set.of())));
                sections(slot)
                        .forEach(section -> duties.add(new Duty(
                                new Subject(Subject.Kind.SECTION, section.code()),
                                circumstances(stretches(slot.fromPlace(), slot.toPlace()).stream()
                                        .filter(stretch -> stretch.isOver(section))),
                                rides(section))));
            }
            if (slot.role() == Post.DRIVER || slot.role() == Post.FIREMAN) {
                classOf(slot)
                        .ifPresent(subject -> duties.add(new Duty(
                                subject, circumstances(stretches(slot.fromPlace(), slot.toPlace()).stream()))));
                needs.add(new PermitRules.Needs(
                        personId.applyAsLong(slot.staffNumber()), duties, others.apply(slot.role())));
            }
        }
        return needs;
    }

    private Set<Circumstance> circumstances(Stream<Stretch> stretches) {
        Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
        if (train.dark()) {
            circumstances.add(Circumstance.DARK);
        }
        if (stretches.anyMatch(Stretch::tenderFirst)) {
            circumstances.add(Circumstance.TENDER_FIRST);
        }
        return circumstances;
    }

    private Optional<Subject> classOf(CrewSlot slot) {
        return engines.current(slot.engineNumber())
                .map(engine -> new Subject(Subject.Kind.CLASS, engine.content().classCode()));
    }

    /** Returns who else goes along, and over which sections: drivers, inspectors and assessors of the crew. */
    List<PermitRules.Companion> companions() {
        return train.crew().stream()
                .filter(slot -> slot.role() != Post.FIREMAN)
                .map(slot -> new PermitRules.Companion(
                        personId.applyAsLong(slot.staffNumber()),
                        boards(slot)
                                ? whole(slot).stream().map(RouteSection::code).toList()
                                : List.of(),
                        teaches(slot),
                        accepted.getOrDefault(personId.applyAsLong(slot.staffNumber()), Set.of()),
                        teaches(slot).stream()
                                .filter(subject -> recognised.test(personId.applyAsLong(slot.staffNumber()), subject))
                                .toList()))
                .toList();
    }

    /** The sections whose named teacher goes along over all of them; an inspector in charge teaches the class of their engine. */
    private List<Subject> teaches(CrewSlot slot) {
        Long id = personId.applyAsLong(slot.staffNumber());
        Stream<Subject> roads = whole(slot).stream()
                .filter(section -> id.equals(section.teacherId()))
                .map(section -> new Subject(Subject.Kind.SECTION, section.code()));
        boolean whole = slot.fromPlace() == null && slot.toPlace() == null;
        boolean inspector = slot.role() == Post.INSPECTOR && inspectors.contains(id);
        Stream<Subject> classes = whole && inspector ? classOf(slot).stream() : Stream.empty();
        return Stream.concat(roads, classes).toList();
    }

    /** Whoever joins or leaves on the way does so where the train stops. */
    private boolean boards(CrewSlot slot) {
        Call from = call(slot.fromPlace());
        Call to = call(slot.toPlace());
        return (from == null || stops(from)) && (to == null || stops(to));
    }

    private boolean stops(Call call) {
        return call.stops()
                || call.equals(train.calls().get(0))
                || call.equals(train.calls().get(train.calls().size() - 1));
    }

    /** Returns from which booked stop to which somebody goes along over a section, in words. */
    private @Nullable String rides(RouteSection section) {
        double begins = Double.POSITIVE_INFINITY;
        double ends = Double.NEGATIVE_INFINITY;
        double run = 0;
        for (TrainDraft.Leg leg : train.legs()) {
            Stretch stretch = Stretch.of(leg);
            if (stretch.isOver(section)) {
                double low = Math.max(section.fromMeasure(), stretch.low());
                double high = Math.min(section.toMeasure(), stretch.high());
                begins = Math.min(begins, run + Math.min(at(leg, low), at(leg, high)));
                ends = Math.max(ends, run + Math.max(at(leg, low), at(leg, high)));
            }
            run += Math.abs(leg.toMeasure() - leg.fromMeasure());
        }
        String from = null;
        String to = null;
        for (Call call : train.calls()) {
            double at = position(call);
            if (stops(call) && at <= begins + CLOSE) {
                from = call.place();
            }
            if (stops(call) && at >= ends - CLOSE && to == null) {
                to = call.place();
            }
        }
        return from == null || to == null ? null : from + " \u2013 " + to;
    }

    private static double at(TrainDraft.Leg leg, double measure) {
        return Math.abs(measure - leg.fromMeasure());
    }

    /** Returns how far along the path a call lies, each route by its own measure. */
    private double position(Call call) {
        double run = 0;
        for (int i = 0; i < call.legNumber() - 1; i++) {
            TrainDraft.Leg leg = train.legs().get(i);
            run += Math.abs(leg.toMeasure() - leg.fromMeasure());
        }
        return run + at(train.legs().get(call.legNumber() - 1), call.atMeasure());
    }

    /** Returns what each driver must hold where the train may be diverted. */
    List<PermitRules.Needs> detours(List<TrainDraft.Leg> legs) {
        List<Duty> duties = legs.stream()
                .map(Stretch::of)
                .flatMap(stretch -> over(stretch).stream())
                .distinct()
                .map(section -> new Duty(new Subject(Subject.Kind.SECTION, section.code()), circumstances(Stream.of())))
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

    /** Returns the stretches of the path that no section covers. */
    List<Permit.Gap> gaps() {
        List<Permit.Gap> gaps = new ArrayList<>();
        for (Stretch stretch : stretches(null, null)) {
            double length = Math.abs(stretch.toMeasure() - stretch.fromMeasure());
            if (covered(stretch) < length - CLOSE) {
                gaps.add(new Permit.Gap(stretch.routeCode(), stretch.fromMeasure(), stretch.toMeasure()));
            }
        }
        return gaps;
    }

    /** Returns how much of a stretch at least one section covers. */
    private double covered(Stretch stretch) {
        double covered = 0;
        double upTo = stretch.low();
        for (RouteSection section : over(stretch).stream()
                .sorted(Comparator.comparing(RouteSection::fromMeasure))
                .toList()) {
            covered += section.covers(Math.max(upTo, stretch.low()), stretch.high());
            upTo = Math.max(upTo, section.toMeasure());
        }
        return covered;
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
                .filter(stretch -> stretch.isOver(section))
                .mapToDouble(stretch -> section.covers(stretch.low(), stretch.high()))
                .sum();
    }

    private List<RouteSection> over(Stretch stretch) {
        return RouteSection.over(
                sections,
                stretch.routeCode(),
                stretch.line(),
                stretch.direction(),
                stretch.fromMeasure(),
                stretch.toMeasure());
    }

    private record Stretch(
            String routeCode,
            String line,
            Direction direction,
            double fromMeasure,
            double toMeasure,
            boolean tenderFirst) {

        static Stretch of(TrainDraft.Leg leg) {
            return of(leg, leg.fromMeasure(), leg.toMeasure());
        }

        /** A part of a leg. */
        static Stretch of(TrainDraft.Leg leg, double fromMeasure, double toMeasure) {
            return new Stretch(leg.routeCode(), leg.line(), leg.direction(), fromMeasure, toMeasure, leg.tenderFirst());
        }

        boolean isOver(RouteSection section) {
            return routeCode.equals(section.routeCode())
                    && direction == section.direction()
                    && section.isOnLine(line)
                    && section.covers(low(), high()) > 0;
        }

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
                stretches.add(Stretch.of(leg, begins, ends));
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
