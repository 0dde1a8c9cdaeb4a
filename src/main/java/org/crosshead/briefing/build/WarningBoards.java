package org.crosshead.briefing.build;

import java.util.Optional;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.PathFeature;

/** Says where the board that warns of a reduction of speed is seen only after braking for it must have begun. */
final class WarningBoards {

    /** A board farther off warns of something else: an own rule. */
    private static final double FAR_M = 4_000;

    private final Workings workings;

    WarningBoards(Workings workings) {
        this.workings = workings;
    }

    /**
     * Returns what is said of a reduction, if anything.
     *
     * @param number of the restriction; blank for a permanent one
     * @param key begins the keys of its figures
     */
    Optional<Phrase> warning(String key, String number, double targetM, double brakeAtM) {
        return board(number, targetM).flatMap(board -> {
            double seenM = Math.max(0, board.fromM() - board.sightingM().orElse(0));
            if (seenM <= brakeAtM) {
                return Optional.empty();
            }
            return Optional.of(Phrase.of(
                    "braking.warning.board-late",
                    Term.text(board.feature().name()),
                    workings.book()
                            .given(
                                    key + "board",
                                    (seenM - brakeAtM) / workings.speeds().distanceUnitM(brakeAtM),
                                    workings.speeds().distanceUnit(brakeAtM),
                                    "route:sighting")));
        });
    }

    /** Returns the last board before it that names the restriction, or for a permanent one the last that names no other. */
    private Optional<PathFeature> board(String number, double targetM) {
        return workings.inputs().path().features().stream()
                .filter(feature -> feature.feature().kind() == FeatureKind.WARNING_BOARD)
                .filter(feature -> feature.fromM() < targetM && targetM - feature.fromM() < FAR_M)
                .filter(feature -> number.isBlank()
                        ? feature.feature().detail().isBlank()
                        : feature.feature().detail().equals(number))
                .reduce((first, second) -> second);
    }
}
