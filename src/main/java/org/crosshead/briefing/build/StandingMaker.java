package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Standing;
import org.crosshead.briefing.document.StandingRow;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.standing.Restart;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;

/** Says of each signal and station how the train is held there and started again, so that the crew can tell the signaller before. */
final class StandingMaker {

    private static final Set<FeatureKind> KINDS = EnumSet.of(FeatureKind.SIGNAL, FeatureKind.STATION);

    private final Workings workings;
    private final StandingPlaces places;
    private final HoldingForces holding;
    private final OwnHandBrakes rule;

    StandingMaker(Workings workings) {
        this.workings = workings;
        places =
                new StandingPlaces(workings.model(), workings.inputs().content().kind());
        holding = new HoldingForces(workings);
        rule = OwnHandBrakes.standing(workings);
    }

    Standing made() {
        List<StandingRow> rows = new ArrayList<>();
        int plain = 0;
        for (PathFeature feature : workings.inputs().path().features()) {
            boolean within = feature.fromM() >= 0
                    && feature.fromM() <= workings.inputs().path().lengthM();
            if (!KINDS.contains(feature.feature().kind()) || BrakeSentences.isDistant(feature) || !within) {
                continue;
            }
            StandingPlaces.Start start = places.at(feature.fromM());
            if (start.way() == Restart.Way.STARTS && holding.engineHolds(feature.fromM())) {
                plain++;
            } else {
                rows.add(row(feature, start, "w" + (rows.size() + 1) + "."));
            }
        }
        return new Standing(rows, plain);
    }

    private StandingRow row(PathFeature feature, StandingPlaces.Start start, String key) {
        return new StandingRow(
                workings.placeAt(feature.fromM()),
                feature.feature().name(),
                start(start, key),
                hold(feature.fromM(), key));
    }

    private Phrase start(StandingPlaces.Start start, String key) {
        Term needed = workings.book().put(key + "needed", places.needed(start));
        Term pull = workings.book().put(key + "pull", places.pull(start));
        return switch (start.way()) {
            case STARTS -> Phrase.of("standing.starts", needed, pull);
            case SETS_BACK -> Phrase.of("standing.sets-back", needed, pull);
            case WITH_SAND -> Phrase.of("standing.with-sand", needed, pull);
            case DOES_NOT_START ->
                Phrase.of(
                        "standing.does-not-start",
                        needed,
                        pull,
                        workings.book().put(key + "lacking", places.lacking(start)));
        };
    }

    private List<Phrase> hold(double atM, String key) {
        if (holding.engineHolds(atM)) {
            return List.of(Phrase.of("standing.hold-engine"));
        }
        List<Phrase> hold = new ArrayList<>();
        hold.add(Phrase.of(
                "standing.hold-train",
                holding.force(key + "hold-needed", holding.neededStep(atM)),
                holding.force(key + "hold-engine", holding.engineStep())));
        hold.add(hand(atM, key));
        if (rule.endsBefore()) {
            hold.add(Phrase.of("standing.hold-hand-beyond"));
        }
        return hold;
    }

    private Phrase hand(double atM, String key) {
        HoldingForces.Hand hand = holding.hand();
        OptionalInt ruled = rule.brakes(holding.slope(atM));
        if (hand.count() == 0) {
            return ruled.isPresent()
                    ? Phrase.of(
                            "standing.hold-hand-ruled",
                            workings.book().given(key + "hands", ruled.getAsInt(), "", "policy:hand-brakes"))
                    : Phrase.of("standing.hold-hand-unknown");
        }
        Figure figure = Figure.of(holding.countSteps(atM, hand, ruled));
        Term wanted = workings.book().put(key + "hands", figure);
        boolean enough = figure.value() <= hand.count();
        return Phrase.of(
                enough ? "standing.hold-hand" : "standing.hold-hand-short",
                wanted,
                workings.book().given(key + "hand-brakes", hand.count(), "", "formation:hand-brakes"));
    }
}
