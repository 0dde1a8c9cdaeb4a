package org.crosshead.routeknowledge.question;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * When a question comes again: soon after a wrong answer, later after each right one. The steps are this project's own rule, after the
 * common practice of spaced repetition (no source); a safety-critical question never rests longer than {@value #SAFETY_DAYS} days.
 */
final class Spacing {

    static final int SAFETY_DAYS = 14;
    /** Not at once, while the answer is still before the eyes. */
    static final Duration SOON = Duration.ofMinutes(10);

    private static final List<Integer> DAYS = List.of(1, 3, 7, 14, 30, 60);

    private Spacing() {}

    /**
     * Returns when it comes again.
     *
     * @param rightSinceWrong right answers one after the other, up to the latest; 0 where that was wrong
     */
    static Instant due(Instant answeredAt, int rightSinceWrong, boolean safetyCritical) {
        if (rightSinceWrong == 0) {
            return answeredAt.plus(SOON);
        }
        int days = DAYS.get(Math.min(rightSinceWrong, DAYS.size()) - 1);
        return answeredAt.plus(Duration.ofDays(safetyCritical ? Math.min(days, SAFETY_DAYS) : days));
    }
}
