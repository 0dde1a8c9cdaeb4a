package org.crosshead.routeknowledge.question;

import java.util.List;

/**
 * A question that somebody has written, in one of its versions.
 *
 * @param number within its section, the same in all versions
 * @param atMeasure place that it is about, by the route's measure
 * @param wrong answers that are not right, all different, one to {@value #WRONG_MOST}
 * @param because what explains the right answer
 * @param withdrawn whether it is asked no more
 */
public record HandQuestion(
        String sectionCode,
        int number,
        int version,
        double atMeasure,
        String words,
        String right,
        List<String> wrong,
        String because,
        boolean safetyCritical,
        boolean withdrawn,
        String enteredBy) {

    public static final int WRONG_MOST = 4;

    public HandQuestion {
        wrong = List.copyOf(wrong);
    }
}
