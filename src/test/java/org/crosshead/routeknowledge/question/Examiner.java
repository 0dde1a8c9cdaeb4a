package org.crosshead.routeknowledge.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.Direction;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;
import org.crosshead.route.PathGeometry;
import org.crosshead.route.PathGradient;
import org.crosshead.route.PathLeg;
import org.crosshead.route.PathLimit;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.TrainKind;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.RouteSection;

/** Answers questions from the path of a train over the whole route, in metres, with other code than that which makes them. */
final class Examiner {

    private static final double CLOSE_M = 0.5;

    private final PathGeometry plain;
    private final PathGeometry unfitted;
    private final PathGeometry tender;
    private final boolean chains;
    private final List<Cue> cues;

    Examiner(RouteRevision route, RouteSection section, List<Cue> cues) {
        this.cues = cues;
        chains = route.content().measureUnit() == org.crosshead.route.MeasureUnit.CHAINS;
        plain = path(route, section, TrainKind.PASSENGER, false);
        unfitted = path(route, section, TrainKind.UNFITTED_GOODS, false);
        tender = path(route, section, TrainKind.PASSENGER, true);
    }

    private static PathGeometry path(RouteRevision route, RouteSection section, TrainKind kind, boolean tenderFirst) {
        boolean rises = section.direction() == Direction.RISING;
        PathLeg leg = new PathLeg(
                route,
                rises ? route.content().fromMeasure() : route.content().toMeasure(),
                rises ? route.content().toMeasure() : route.content().fromMeasure(),
                rises
                        ? route.content().lines().get(0)
                        : route.content().lines().get(route.content().lines().size() - 1),
                section.direction(),
                tenderFirst);
        return PathGeometry.of(List.of(leg), kind, List.of());
    }

    /** Returns which of the options the road itself says are right. */
    Set<String> right(Question question) {
        Set<String> right = new TreeSet<>();
        for (Question.Answer option : question.options()) {
            String said = option.code().isEmpty() ? option.text() : option.code();
            if (isRight(question, said)) {
                right.add(said);
            }
        }
        return right;
    }

    private PathFeature thing(String name) {
        List<PathFeature> found = plain.features().stream()
                .filter(one -> one.feature().name().equals(name))
                .toList();
        if (found.size() != 1) {
            throw new IllegalStateException(name + " is met " + found.size() + " times");
        }
        return found.get(0);
    }

    private boolean isRight(Question question, String said) {
        List<String> about = question.about();
        return switch (question.sort()) {
            case BY_HAND, BY_HAND_CRITICAL -> throw new IllegalArgumentException("the road does not answer it");
            case NEXT_AFTER ->
                metBetween(thing(about.get(0)), thing(said)).isEmpty()
                        && thing(said).fromM() > thing(about.get(0)).fromM();
            case LAST_BEFORE ->
                metBetween(thing(said), thing(about.get(0))).isEmpty()
                        && thing(said).fromM() < thing(about.get(0)).fromM();
            case NEXT_SIGNAL -> isNext(about.get(0), said, FeatureKind.SIGNAL);
            case NEXT_STATION -> isNext(about.get(0), said, FeatureKind.STATION);
            case NEXT_WATER -> isNext(about.get(0), said, FeatureKind.WATER_COLUMN);
            case NEXT_CATCH_POINTS -> isNext(about.get(0), said, FeatureKind.CATCH_POINTS);
            case LIMIT -> limit(plain, thing(about.get(0)).fromM()).equals(said);
            case LIMIT_UNFITTED -> limit(unfitted, thing(about.get(0)).fromM()).equals(said);
            case LIMIT_TENDER_FIRST ->
                limit(tender, thing(about.get(0)).fromM()).equals(said);
            case LIMIT_FALLS_AT ->
                plain.limits().stream()
                        .filter(limit -> said(limit).equals(about.get(0)))
                        .filter(limit -> limit.fromM() > thing(about.get(1)).fromM())
                        .filter(limit -> limit(plain, limit.fromM() + CLOSE_M).equals(about.get(0)))
                        .anyMatch(limit -> plain.at(limit.fromM()).measureText().equals(said));
            case LAST_BEFORE_LIMIT ->
                plain.limits().stream()
                        .filter(limit -> said(limit).equals(about.get(0)))
                        .filter(limit -> plain.at(limit.fromM()).measureText().equals(about.get(1)))
                        .anyMatch(limit -> lastBefore(limit.fromM()).equals(said));
            case WAY -> way(thing(about.get(0)).fromM()).equals(said);
            case GRADIENT -> steepness(gradient(thing(about.get(0)).fromM())).equals(said);
            case STEEPEST -> steepest(thing(about.get(0)), thing(about.get(1))).equals(said);
            case ORDER -> order(about).equals(said);
            case BETWEEN ->
                thing(said).fromM() > thing(about.get(0)).fromM()
                        && thing(said).fromM() < thing(about.get(1)).fromM();
            case DISTANCE ->
                isDistance(thing(about.get(1)).fromM() - thing(about.get(0)).fromM(), said);
            case SIGNALS_BETWEEN ->
                Long.toString(plain.features().stream()
                                .filter(one -> one.feature().kind() == FeatureKind.SIGNAL)
                                .filter(one -> one.fromM() > thing(about.get(0)).fromM()
                                        && one.fromM() < thing(about.get(1)).fromM())
                                .count())
                        .equals(said);
            case SIGHTING -> Math.abs(thing(about.get(0)).sightingM().orElseThrow() - sightingM(said)) < CLOSE_M;
            case BY_NIGHT -> thing(said).feature().seenByNight();
            case CUE ->
                cues.stream()
                        .filter(cue -> cue.featureName().equals(about.get(0)))
                        .anyMatch(cue -> said.equals("cue.tells." + cue.tells()));
            case TUNNEL_LENGTH -> {
                PathFeature tunnel = thing(about.get(0));
                Double end = tunnel.toM();
                yield end != null && isDistance(end - tunnel.fromM(), said);
            }
        };
    }

    private List<PathFeature> metBetween(PathFeature from, PathFeature to) {
        return plain.features().stream()
                .filter(one -> one.feature().kind() != FeatureKind.WARNING_BOARD)
                .filter(one -> !one.feature().name().isBlank())
                .filter(one -> one.fromM() > from.fromM() + 1e-6 && one.fromM() < to.fromM() - 1e-6)
                .toList();
    }

    private boolean isNext(String after, String said, FeatureKind kind) {
        return plain.features().stream()
                .filter(one ->
                        one.feature().kind() == kind && !one.feature().name().isBlank())
                .filter(one -> one.fromM() > thing(after).fromM() + 1e-6)
                .min(Comparator.comparingDouble(PathFeature::fromM))
                .map(one -> one.feature().name().equals(said))
                .orElse(false);
    }

    private static String limit(PathGeometry path, double atM) {
        return path.limits().stream()
                .filter(limit -> limit.fromM() <= atM && limit.toM() >= atM)
                .min(Comparator.comparingDouble(PathLimit::limitMps))
                .map(Examiner::said)
                .orElse("");
    }

    private static String said(PathLimit limit) {
        return String.format(
                Locale.ROOT,
                "%.0f %s",
                limit.limit(),
                limit.limitUnit() == org.crosshead.route.SpeedUnit.MPH ? "mph" : "km/h");
    }

    private String lastBefore(double atM) {
        return plain.features().stream()
                .filter(one -> one.feature().kind() != FeatureKind.WARNING_BOARD)
                .filter(one -> !one.feature().name().isBlank() && one.fromM() < atM - 1e-6)
                .max(Comparator.comparingDouble(PathFeature::fromM))
                .map(one -> one.feature().name())
                .orElse("");
    }

    private PathGradient gradient(double atM) {
        return plain.gradients().stream()
                .filter(one -> one.fromM() <= atM && one.toM() >= atM)
                .findFirst()
                .orElseThrow();
    }

    private String way(double atM) {
        double gradient = gradient(atM).gradient();
        return gradient > 0 ? "question.way.rises" : gradient < 0 ? "question.way.falls" : "question.way.level";
    }

    private static String steepness(PathGradient gradient) {
        String value =
                String.format(Locale.ROOT, "%s", Math.abs(gradient.value())).replaceFirst("\\.0$", "");
        return switch (gradient.notation()) {
            case ONE_IN -> "1 in " + value;
            case PER_MILLE -> value + " per mille";
            case LEVEL -> "";
        };
    }

    private String steepest(PathFeature from, PathFeature to) {
        return plain.gradients().stream()
                .filter(one -> one.toM() > from.fromM() + 1e-6 && one.fromM() < to.fromM() - 1e-6)
                .max(Comparator.comparingDouble(one -> Math.abs(one.gradient())))
                .map(Examiner::steepness)
                .orElse("");
    }

    private String order(List<String> names) {
        List<String> ordered = new ArrayList<>(names);
        ordered.sort(Comparator.comparingDouble(name -> thing(name).fromM()));
        return ordered.stream().collect(Collectors.joining(" – "));
    }

    /** Says whether a text means a distance, to half a chain or 50 m. */
    private boolean isDistance(double metres, String said) {
        if (!chains) {
            return Math.abs(metres - 1_000 * Double.parseDouble(said.replace(" km", ""))) <= 50.001;
        }
        String[] words = said.split(" ", -1);
        double apart = Double.parseDouble(words[0]) * 80 + Double.parseDouble(words[2]);
        return Math.abs(Units.chainsFromMetres(metres) - apart) <= 0.5 + 1e-6;
    }

    private static double sightingM(String said) {
        String[] words = said.split(" ", -1);
        double value = Double.parseDouble(words[0]);
        return switch (words[1]) {
            case "yards" -> Units.metresFromYards(value);
            case "feet" -> Units.metresFromFeet(value);
            case "metres" -> value;
            default -> Units.metresFromChains(value);
        };
    }
}
