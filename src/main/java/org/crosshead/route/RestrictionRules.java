package org.crosshead.route;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A restriction lies on a known route, limits to a possible speed, and ends after it begins. */
final class RestrictionRules {

    private static final int NUMBER_LENGTH_MAX = 40;

    private RestrictionRules() {}

    static List<RouteProblem> problems(
            RestrictionDraft draft, Function<String, Optional<Extent>> extents, List<Restriction> known) {
        Problems problems = new Problems()
                .name("number", draft.number(), NUMBER_LENGTH_MAX)
                .limit(draft.limit(), draft.limitUnit())
                .reason(draft.reason());
        extents.apply(draft.routeCode())
                .ifPresentOrElse(
                        extent -> extent.checkLength(draft.fromMeasure(), draft.toMeasure(), problems),
                        () -> problems.refuse("routeCode", "route-unknown", draft.routeCode()));
        problems.refuseIf(draft.lastMoment().isBefore(draft.firstMoment()), "lastMoment", "ends-before-it-begins");
        problems.refuseIf(
                known.stream()
                        .anyMatch(
                                one -> one.withdrawnAt() == null && one.draft().equals(draft)),
                "number",
                "restriction-twice",
                draft.number());
        return problems.found();
    }
}
