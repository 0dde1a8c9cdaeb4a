package org.crosshead.route.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A revision of a route, in words ready to show. */
record RoutePage(
        Head head,
        int number,
        @Nullable Estimates estimates,
        String outline,
        List<Row> gradients,
        List<Row> curves,
        List<Row> limits,
        List<FeatureRow> features) {

    /**
     * How many of its figures nobody measured, in words; none is null.
     *
     * @param waiting whether they wait to be accepted
     */
    record Estimates(String words, boolean waiting) {}

    /**
     * What stands above the lists.
     *
     * @param revision its number and who made it when and why
     */
    record Head(
            String code,
            String name,
            String from,
            String to,
            String length,
            String directions,
            String lines,
            String revision) {}

    /**
     * A length of the route.
     *
     * @param extra for what a limit holds; empty for other lists
     * @param originStyle class of the style sheet for where the figure came from
     */
    record Row(String from, String to, String figure, String extra, String origin, String originStyle, String note) {}

    /** Something that a crew meets. */
    record FeatureRow(
            String at,
            String kind,
            String name,
            String holdsFor,
            String detail,
            String origin,
            String originStyle,
            String note) {}

    RoutePage {
        gradients = List.copyOf(gradients);
        curves = List.copyOf(curves);
        limits = List.copyOf(limits);
        features = List.copyOf(features);
    }
}
