package org.crosshead.routeknowledge.question;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.LengthUnit;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.crosshead.route.Scope;
import org.crosshead.route.TrainKind;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.question.Question.Answer;

/**
 * Makes all questions that a section's road yields. The same road gives the same questions with the same answers to choose from, in the
 * same order; nothing is asked of which the route says nothing.
 */
public final class Questions {

    private static final int OPTIONS = 4;
    private static final int PAIRS_APART = 12;
    private static final double MILE_CHAINS = 80;
    private static final double LEVEL_SLOPE = 1e-12;
    private static final int DISTANCES_APART = 3;

    private final SectionRoad road;
    private final List<Feature> things;
    private final List<Question> made = new ArrayList<>();

    private Questions(SectionRoad road) {
        this.road = road;
        this.things = road.things();
    }

    public static List<Question> of(SectionRoad road) {
        Questions questions = new Questions(road);
        questions.neighbours();
        questions.limits();
        questions.gradients();
        questions.groups();
        questions.own();
        Set<String> keys = new HashSet<>();
        return questions.made.stream()
                .filter(question -> keys.add(question.key()))
                .toList();
    }

    private static String name(Feature thing) {
        return thing.name();
    }

    private static List<String> names(List<Feature> things) {
        return things.stream().map(Questions::name).toList();
    }

    private String measure(double atMeasure) {
        return org.crosshead.route.Measures.format(atMeasure, road.unit());
    }

    private String measure(Feature thing) {
        return measure(at(thing));
    }

    private double at(Feature thing) {
        return road.at(thing);
    }

    /** Adds a question with wrong answers from some, unless there are too few of them. */
    private void ask(
            Sort sort, Feature at, List<String> about, String right, Stream<String> wrong, List<String> because) {
        String key = sort + ":" + String.join("|", about);
        Random chance = new Random(key.hashCode());
        List<String> others = new ArrayList<>(new LinkedHashSet<>(
                wrong.filter(option -> !option.equals(right)).toList()));
        Collections.shuffle(others, chance);
        if (others.isEmpty()) {
            return;
        }
        List<String> options = new ArrayList<>(others.subList(0, Math.min(OPTIONS - 1, others.size())));
        options.add(right);
        Collections.shuffle(options, chance);
        made.add(new Question(
                key, sort, about, options.stream().map(Answer::of).toList(), options.indexOf(right), because, at(at)));
    }

    /** What comes next and before. */
    private void neighbours() {
        for (int i = 0; i < things.size(); i++) {
            Feature thing = things.get(i);
            boolean alone = i + 1 < things.size()
                    && apart(thing, things.get(i + 1))
                    && !road.isAnythingBetween(at(thing), at(things.get(i + 1)));
            if (alone) {
                Feature next = things.get(i + 1);
                List<Feature> near = things.subList(Math.max(0, i - 3), Math.min(things.size(), i + 7));
                boolean nextAlone = i + 2 >= things.size() || apart(next, things.get(i + 2));
                if (nextAlone) {
                    ask(
                            Sort.NEXT_AFTER,
                            thing,
                            List.of(name(thing)),
                            name(next),
                            near.stream().filter(one -> !one.equals(thing)).map(Questions::name),
                            List.of(name(next), measure(next)));
                }
                boolean before = i == 0 || apart(things.get(i - 1), thing);
                if (before) {
                    ask(
                            Sort.LAST_BEFORE,
                            next,
                            List.of(name(next)),
                            name(thing),
                            near.stream().filter(one -> !one.equals(next)).map(Questions::name),
                            List.of(name(thing), measure(thing)));
                }
            }
            nextOf(Sort.NEXT_SIGNAL, thing, FeatureKind.SIGNAL);
            nextOf(Sort.NEXT_STATION, thing, FeatureKind.STATION);
            nextOf(Sort.NEXT_WATER, thing, FeatureKind.WATER_COLUMN);
            nextOf(Sort.NEXT_CATCH_POINTS, thing, FeatureKind.CATCH_POINTS);
        }
    }

    private boolean apart(Feature one, Feature next) {
        return at(one) != at(next);
    }

    private void nextOf(Sort sort, Feature thing, FeatureKind kind) {
        List<Feature> all = road.things(kind);
        List<Feature> met =
                road.met().stream().filter(one -> one.kind() == kind).toList();
        met.stream()
                .filter(one -> road.ahead(at(thing), at(one)) > 0)
                .findFirst()
                .filter(all::contains)
                .filter(next -> met.stream().filter(one -> !apart(one, next)).count() == 1)
                .ifPresent(next -> ask(
                        sort,
                        thing,
                        List.of(name(thing)),
                        name(next),
                        all.stream().filter(one -> !one.equals(thing)).map(Questions::name),
                        List.of(name(next), measure(next))));
    }

    private void limits() {
        for (Feature thing : things) {
            limit(Sort.LIMIT, thing, TrainKind.PASSENGER, false);
            limit(Sort.LIMIT_UNFITTED, thing, TrainKind.UNFITTED_GOODS, false);
            limit(Sort.LIMIT_TENDER_FIRST, thing, TrainKind.PASSENGER, true);
        }
        for (LimitLength limit : road.limits()) {
            boolean general = limit.scope().covers(road.section().direction())
                    && limit.trainKind() == null
                    && !limit.tenderFirst();
            if (general) {
                falls(limit);
            }
        }
    }

    private void limit(Sort sort, Feature thing, TrainKind kind, boolean tenderFirst) {
        road.limit(at(thing), kind, tenderFirst)
                .filter(limit -> !changesAt(at(thing)))
                .ifPresent(limit -> ask(
                        sort,
                        thing,
                        List.of(name(thing)),
                        SectionRoad.said(limit),
                        road.speeds().stream(),
                        List.of(SectionRoad.said(limit), measure(limit.fromMeasure()), measure(limit.toMeasure()))));
    }

    private boolean changesAt(double measure) {
        return road.limits().stream().anyMatch(limit -> limit.fromMeasure() == measure || limit.toMeasure() == measure);
    }

    /** Where a lower limit begins. */
    private void falls(LimitLength limit) {
        double begins = road.rises() ? limit.fromMeasure() : limit.toMeasure();
        if (begins < road.section().fromMeasure() || begins > road.section().toMeasure()) {
            return;
        }
        double before = road.rises() ? begins - 1e-6 : begins + 1e-6;
        double within = road.rises() ? begins + 1e-6 : begins - 1e-6;
        Optional<LimitLength> was = road.limit(before, TrainKind.PASSENGER, false);
        boolean lower = was.isPresent()
                && limit.limitUnit().mps(limit.limit())
                        < was.get().limitUnit().mps(was.get().limit())
                && road.limit(within, TrainKind.PASSENGER, false)
                        .filter(limit::equals)
                        .isPresent();
        List<Feature> passed = things.stream()
                .filter(thing -> road.ahead(at(thing), begins) > 0)
                .toList();
        if (!lower || passed.isEmpty()) {
            return;
        }
        Feature last = passed.get(passed.size() - 1);
        boolean alone = (passed.size() == 1 || apart(passed.get(passed.size() - 2), last))
                && !road.isAnythingBetween(at(last), begins);
        String said = SectionRoad.said(limit);
        if (alone) {
            ask(
                    Sort.LAST_BEFORE_LIMIT,
                    last,
                    List.of(said, measure(begins)),
                    name(last),
                    things.stream().map(Questions::name),
                    List.of(name(last), measure(last), measure(begins)));
        }
        Set<String> others = new TreeSet<>();
        road.limits().forEach(one -> {
            others.add(measure(one.fromMeasure()));
            others.add(measure(one.toMeasure()));
        });
        road.limits().stream()
                .filter(one -> !one.equals(limit) && SectionRoad.said(one).equals(said))
                .forEach(one -> others.remove(measure(road.rises() ? one.fromMeasure() : one.toMeasure())));
        ask(
                Sort.LIMIT_FALLS_AT,
                last,
                List.of(said, name(last)),
                measure(begins),
                others.stream(),
                List.of(said, measure(begins)));
    }

    private void gradients() {
        Set<String> steepnesses = new TreeSet<>();
        road.gradients().forEach(length -> steepnesses.add(SectionRoad.steepness(length)));
        steepnesses.remove("");
        for (Feature thing : things) {
            Optional<GradientLength> there = road.gradient(at(thing));
            there.ifPresent(length -> way(thing, length));
            there.filter(length -> Math.abs(road.slope(length)) > LEVEL_SLOPE)
                    .ifPresent(length -> ask(
                            Sort.GRADIENT,
                            thing,
                            List.of(name(thing)),
                            SectionRoad.steepness(length),
                            steepnesses.stream(),
                            List.of(
                                    SectionRoad.steepness(length),
                                    measure(length.fromMeasure()),
                                    measure(length.toMeasure()))));
        }
        List<Feature> stations = road.things(FeatureKind.STATION);
        for (int i = 0; i + 1 < stations.size(); i++) {
            steepest(stations.get(i), stations.get(i + 1), steepnesses);
        }
    }

    private void way(Feature thing, GradientLength length) {
        double slope = road.slope(length);
        List<Answer> ways = List.of(
                new Answer("question.way.rises", ""),
                new Answer("question.way.falls", ""),
                new Answer("question.way.level", ""));
        int right = slope > LEVEL_SLOPE ? 0 : slope < -LEVEL_SLOPE ? 1 : 2;
        made.add(new Question(
                Sort.WAY + ":" + name(thing),
                Sort.WAY,
                List.of(name(thing)),
                ways,
                right,
                List.of(SectionRoad.steepness(length), measure(length.fromMeasure()), measure(length.toMeasure())),
                at(thing)));
    }

    private void steepest(Feature from, Feature to, Set<String> steepnesses) {
        double low = Math.min(at(from), at(to));
        double high = Math.max(at(from), at(to));
        List<GradientLength> between = road.gradients().stream()
                .filter(length -> length.fromMeasure() < high && length.toMeasure() > low)
                .sorted((one, other) -> Double.compare(Math.abs(road.slope(other)), Math.abs(road.slope(one))))
                .toList();
        boolean one = between.size() > 1
                && Math.abs(road.slope(between.get(0))) > Math.abs(road.slope(between.get(1))) + LEVEL_SLOPE;
        if (one) {
            GradientLength steepest = between.get(0);
            ask(
                    Sort.STEEPEST,
                    from,
                    List.of(name(from), name(to)),
                    SectionRoad.steepness(steepest),
                    steepnesses.stream(),
                    List.of(
                            SectionRoad.steepness(steepest),
                            measure(steepest.fromMeasure()),
                            measure(steepest.toMeasure())));
        }
    }

    /** Of two or three things. */
    private void groups() {
        for (int i = 0; i < things.size(); i++) {
            for (int j = i + 2; j < Math.min(things.size(), i + PAIRS_APART); j++) {
                pair(i, j);
            }
            if (i + 4 < things.size()) {
                order(things.get(i), things.get(i + 2), things.get(i + 4));
            }
        }
    }

    private void pair(int i, int j) {
        Feature from = things.get(i);
        Feature to = things.get(j);
        Feature mid = things.get((i + j) / 2);
        boolean inside = apart(from, mid) && apart(mid, to);
        if (inside) {
            ask(
                    Sort.BETWEEN,
                    mid,
                    List.of(name(from), name(to)),
                    name(mid),
                    Stream.concat(things.subList(0, i).stream(), things.subList(j + 1, things.size()).stream())
                            .filter(one -> apart(one, from) && apart(one, to))
                            .map(Questions::name),
                    List.of(name(mid), measure(mid)));
        }
        if (from.kind() == FeatureKind.STATION || to.kind() == FeatureKind.STATION) {
            distance(from, to);
            long signals = road.met().stream()
                    .filter(one -> one.kind() == FeatureKind.SIGNAL)
                    .filter(one -> road.ahead(at(from), at(one)) > 0 && road.ahead(at(one), at(to)) > 0)
                    .count();
            ask(
                    Sort.SIGNALS_BETWEEN,
                    from,
                    List.of(name(from), name(to)),
                    Long.toString(signals),
                    Stream.of(signals + 1, Math.max(0, signals - 1), signals + 2)
                            .map(String::valueOf),
                    List.of(Long.toString(signals)));
        }
    }

    /** Answers lie far enough apart that nobody need guess: half as far again, and twice as far. */
    private void distance(Feature from, Feature to) {
        double apart = Math.abs(at(from) - at(to));
        boolean chains = road.unit() == MeasureUnit.CHAINS;
        if (apart < (chains ? 20 : 0.4)) {
            return;
        }
        ask(
                Sort.DISTANCE,
                from,
                List.of(name(from), name(to)),
                said(apart),
                Stream.of(apart / 2, apart * 1.5, apart * 2, apart * DISTANCES_APART)
                        .map(this::said),
                List.of(said(apart), measure(from), measure(to)));
    }

    private String said(double apart) {
        return road.unit() == MeasureUnit.CHAINS
                ? String.format(Locale.ROOT, "%d miles %d chains", (int) (Math.rint(apart) / MILE_CHAINS), (int)
                        (Math.rint(apart) % MILE_CHAINS))
                : String.format(Locale.ROOT, "%.1f km", apart);
    }

    private void order(Feature first, Feature second, Feature third) {
        if (!apart(first, second) || !apart(second, third)) {
            return;
        }
        List<String> names = names(List.of(first, second, third));
        List<String> sorted = names.stream().sorted().toList();
        ask(
                Sort.ORDER,
                first,
                sorted,
                String.join(" – ", names),
                Stream.of(
                                List.of(names.get(1), names.get(0), names.get(2)),
                                List.of(names.get(0), names.get(2), names.get(1)),
                                List.of(names.get(2), names.get(1), names.get(0)))
                        .map(one -> String.join(" – ", one)),
                List.of(measure(first), measure(second), measure(third)));
    }

    /** What a thing tells the driver; asked where it tells one thing only. */
    private void cue(Feature thing) {
        List<Cue> cues = road.cues(thing);
        if (cues.size() != 1) {
            return;
        }
        Cue cue = cues.get(0);
        String key = Sort.CUE + ":" + name(thing);
        List<Cue.Tells> tells = new ArrayList<>(List.of(Cue.Tells.values()));
        tells.remove(cue.tells());
        Random chance = new Random(key.hashCode());
        Collections.shuffle(tells, chance);
        List<Cue.Tells> options = new ArrayList<>(tells.subList(0, OPTIONS - 1));
        options.add(cue.tells());
        Collections.shuffle(options, chance);
        made.add(new Question(
                key,
                Sort.CUE,
                List.of(name(thing)),
                options.stream().map(one -> new Answer("cue.tells." + one, "")).toList(),
                options.indexOf(cue.tells()),
                List.of(cue.meaning(), cue.missed()),
                at(thing)));
    }

    /** What a thing says of itself. */
    private void own() {
        things.forEach(this::cue);
        List<Feature> dark = things.stream()
                .filter(one -> one.seenByDay() && !one.seenByNight())
                .toList();
        Set<String> sightings = new TreeSet<>();
        road.things(FeatureKind.SIGNAL).forEach(signal -> sighting(signal).ifPresent(sightings::add));
        for (Feature thing : things) {
            if (thing.kind() == FeatureKind.SIGNAL) {
                sighting(thing)
                        .ifPresent(seen -> ask(
                                Sort.SIGHTING,
                                thing,
                                List.of(name(thing)),
                                seen,
                                sightings.stream(),
                                List.of(seen, measure(thing))));
            }
            if (thing.kind() == FeatureKind.LANDMARK && thing.seenByNight()) {
                ask(
                        Sort.BY_NIGHT,
                        thing,
                        List.of(measure(thing)),
                        name(thing),
                        dark.stream().map(Questions::name),
                        List.of(name(thing), measure(thing)));
            }
            Double end = thing.toMeasure();
            if (thing.kind() == FeatureKind.TUNNEL && end != null) {
                double length = Math.abs(end - thing.atMeasure());
                ask(
                        Sort.TUNNEL_LENGTH,
                        thing,
                        List.of(name(thing)),
                        said(length),
                        Stream.of(length / 2, length * 1.5, length * 2, length * DISTANCES_APART)
                                .map(this::said),
                        List.of(said(length), measure(thing.atMeasure()), measure(end)));
            }
        }
    }

    private static Optional<String> sighting(Feature signal) {
        Double seen = signal.sighting();
        LengthUnit unit = signal.lengthUnit();
        boolean own = signal.scope() != Scope.BOTH;
        return seen == null || unit == null || !own
                ? Optional.empty()
                : Optional.of(SectionRoad.plain(seen) + " " + unit.name().toLowerCase(Locale.ROOT));
    }
}
