package org.crosshead.briefing.build;

import java.util.List;
import java.util.Locale;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.build.HandWork.Worked;
import org.crosshead.briefing.document.HandRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** Makes the list of what an inspector changed by hand, with what it costs. */
final class HandRowMaker {

    private static final double PER_CENT = 100;
    private static final double TOLD_IN_MINUTES_S = 120;
    private static final double MINUTE_S = 60;

    private final Workings workings;

    HandRowMaker(Workings workings) {
        this.workings = workings;
    }

    List<HandRow> rows() {
        return workings.byHand().stream().map(this::row).toList();
    }

    private HandRow row(Worked worked) {
        HandPointDraft draft = worked.point().draft();
        String kind = draft.kind().name().toLowerCase(Locale.ROOT);
        boolean costs = worked.applied() && draft.kind() != HandPointDraft.Kind.NOTE;
        return new HandRow(
                worked.point().id(),
                kind,
                words(draft),
                draft.reason(),
                worked.point().enteredBy(),
                worked.fate(),
                Double.isNaN(worked.limitM()) ? null : workings.placeAt(worked.limitM()),
                costs ? cost(worked) : null);
    }

    private Phrase cost(Worked worked) {
        String key = "hand" + worked.point().id() + ".";
        double seconds = Math.abs(worked.timeS());
        boolean minutes = seconds >= TOLD_IN_MINUTES_S;
        String kind =
                "hand.cost-" + (worked.coalKg() < 0 ? "less-" : "more-") + (worked.timeS() < 0 ? "sooner" : "later");
        return Phrase.of(
                kind,
                workings.book().given(key + "coal", Units.lbFromKg(Math.abs(worked.coalKg())), "lb", "plan:by-hand"),
                workings.book()
                        .given(
                                key + "time",
                                minutes ? seconds / MINUTE_S : seconds,
                                minutes ? "min" : "sec",
                                "plan:by-hand"));
    }

    private Phrase words(HandPointDraft draft) {
        return switch (draft.kind()) {
            case MOVED -> Phrase.of("hand.moved", place(draft.at()), place(draft.to()));
            case STRUCK -> Phrase.of("hand.struck", place(draft.at()));
            case NOTE -> Phrase.of("hand.note", place(draft.at()), Term.text(draft.note()));
            case SET -> set(draft);
        };
    }

    private Phrase set(HandPointDraft draft) {
        Double cutoff = draft.cutoff();
        Double regulator = draft.regulator();
        if (cutoff == null || regulator == null || regulator <= 0) {
            return Phrase.of("hand.set-shut", place(draft.at()));
        }
        return Phrase.of(
                "hand.set",
                place(draft.at()),
                Term.number(PER_CENT * cutoff, "%"),
                Term.text(regulator >= 1 ? "regulator.wide" : "regulator.first-valve"));
    }

    private Term place(@Nullable HandSpot spot) {
        if (spot == null) {
            return Term.text("");
        }
        double nearM = workings.inputs()
                .path()
                .pathM(spot.routeCode(), spot.measure(), spot.pathM())
                .orElse(spot.pathM());
        return workings.place(nearM);
    }
}
