package org.crosshead.briefing.build;

import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.Handles;
import org.crosshead.kernel.traction.Controls;
import org.jspecify.annotations.Nullable;

/**
 * What is told at a point, before the place is looked up.
 *
 * @param controls as set there; null where no handle is touched
 */
record Told(String action, boolean forFireman, @Nullable Controls controls, Phrase words, Cause cause) {

    /** A point before it is numbered. */
    record Point(int sample, Told told) {}

    /** Says whether it is a brake application. */
    boolean brakes() {
        return action.startsWith("brake-");
    }

    /** Says whether steam is set anew by it. */
    boolean setsSteam() {
        return !forFireman && controls != null && controls.regulator() > 0;
    }

    /** Returns what is told of handles as they are set. */
    static Told driver(Change.HandlesSet set, @Nullable Handles before) {
        Controls now = set.handles().controls();
        String action = action(set.handles(), before);
        Phrase words = Phrase.of("action." + action, Term.number(100 * now.cutoff(), "%"), regulator(now));
        Cause cause = action.equals("cocks-shut")
                ? Cause.BEATS_COUNTED
                : set.handles().cause();
        return new Told(action, false, now, words, cause);
    }

    /** Returns the regulator in words. */
    static Term regulator(Controls controls) {
        if (controls.regulator() >= 1) {
            return Term.text("regulator.wide");
        }
        if (controls.regulator() > Controls.FIRST_VALVE) {
            return Term.text("regulator.eased");
        }
        return Term.text(controls.regulator() > 0 ? "regulator.first-valve" : "regulator.shut");
    }

    private static String action(Handles now, @Nullable Handles before) {
        Controls controls = now.controls();
        if (controls.regulator() <= 0) {
            return "shut-off";
        }
        if (now.cocksOpen()) {
            return "start";
        }
        if (before != null && before.cocksOpen()) {
            return "cocks-shut";
        }
        if (before == null || before.controls().regulator() <= 0) {
            return "open-up";
        }
        double was = before.controls().cutoff();
        if (controls.cutoff() < was) {
            return "notch-up";
        }
        if (controls.cutoff() > was) {
            return "let-out";
        }
        return controls.regulator() < before.controls().regulator() ? "ease-regulator" : "widen-regulator";
    }
}
