package org.crosshead.competence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.crosshead.route.Direction;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.jspecify.annotations.Nullable;

/** Over which sections a train runs, which of them each of its crew runs over, and what no section covers. */
final class TrainRoad {

    private static final double CLOSE = 1e-6;

    private final TrainDraft train;
    private final List<RouteSection> sections;

    /**
     * @param sections all that are laid down
     */
    TrainRoad(TrainDraft train, List<RouteSection> sections) {
        this.train = train;
        this.sections = List.copyOf(sections);
    }

    /** Says whether any of what one of the crew runs over is run tender first. */
    boolean isTenderFirst(CrewSlot slot) {
        return along(slot).anyMatch(Stretch::tenderFirst);
    }

    /** Says whether any of what one of the crew runs over of a section is run tender first. */
    boolean isTenderFirst(CrewSlot slot, RouteSection section) {
        return along(slot).filter(stretch -> stretch.isOver(section)).anyMatch(Stretch::tenderFirst);
    }

    /** From where to where somebody runs over a section, by the route's measure. */
    record Part(double lowMeasure, double highMeasure) {}

    /** Returns the part of a section over which one of the crew runs, from its lowest measure to its highest. */
    Part part(CrewSlot slot, RouteSection section) {
        double low = section.toMeasure();
        double high = section.fromMeasure();
        for (Stretch stretch : along(slot).filter(one -> one.isOver(section)).toList()) {
            low = Math.min(low, Math.max(stretch.low(), section.fromMeasure()));
            high = Math.max(high, Math.min(stretch.high(), section.toMeasure()));
        }
        return new Part(low, high);
    }

    private Stream<Stretch> along(CrewSlot slot) {
        return stretches(slot.fromPlace(), slot.toPlace()).stream();
    }

    /** Whoever joins or leaves on the way does so where the train stops. */
    boolean boards(CrewSlot slot) {
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
    @Nullable
    String rides(RouteSection section) {
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

    /** Returns the sections that one of the crew runs over, in running order. */
    List<RouteSection> sections(CrewSlot slot) {
        return stretches(slot.fromPlace(), slot.toPlace()).stream()
                .flatMap(stretch -> over(stretch).stream())
                .distinct()
                .toList();
    }

    /** Returns the sections of which somebody goes along over all that the train runs of them. */
    List<RouteSection> whole(CrewSlot slot) {
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

    /** Returns the sections that a leg runs over, in running order. */
    List<RouteSection> over(TrainDraft.Leg leg) {
        return over(Stretch.of(leg));
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
