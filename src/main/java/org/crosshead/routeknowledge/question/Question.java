package org.crosshead.routeknowledge.question;

import java.util.List;

/**
 * A question with one right answer.
 *
 * @param key the same for the same question on the same road
 * @param about what it names, for its words
 * @param options answers to choose from, all different
 * @param right index of the right one
 * @param because what the route says, for the explanation
 * @param atMeasure place that it is about, for finding where a road is badly taught
 */
public record Question(
        String key,
        Sort sort,
        List<String> about,
        List<Answer> options,
        int right,
        List<String> because,
        double atMeasure) {

    public Question {
        about = List.copyOf(about);
        options = List.copyOf(options);
        because = List.copyOf(because);
    }

    /**
     * An answer.
     *
     * @param code of the message that says it; blank where the text itself is the answer
     */
    public record Answer(String code, String text) {

        static Answer of(String text) {
            return new Answer("", text);
        }
    }

    /** Returns the right answer. */
    public Answer answer() {
        return options.get(right);
    }
}
