package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.RunRequest;
import org.crosshead.kernel.plan.PlanFailure;
import org.crosshead.kernel.plan.Planner;
import org.crosshead.kernel.units.Units;

/** Says why a train has no plan, and with what it would. */
final class NoPlan {

    private static final double LOAD_STEP_TONS = 5;

    private final RunRequest request;
    private final Places places;
    private final DoubleFunction<Term> load;

    /**
     * @param request marked as the plan was asked for
     * @param load makes the term of a load in tons
     */
    NoPlan(RunRequest request, Places places, DoubleFunction<Term> load) {
        this.request = request;
        this.places = places;
        this.load = load;
    }

    List<Phrase> sentences() {
        List<Phrase> said = new ArrayList<>();
        Planner.failure(request).ifPresent(failure -> said.addAll(told(failure)));
        said.add(Phrase.of("today.no-plan"));
        return said;
    }

    private List<Phrase> told(PlanFailure failure) {
        String limit = failure.limit().name().toLowerCase(Locale.ROOT).replace('_', '-');
        List<Phrase> said = new ArrayList<>();
        said.add(
                failure.at().isPresent()
                        ? Phrase.of(
                                "today.plan-breaks." + limit,
                                Term.place(places.at(failure.at().getAsDouble())))
                        : Phrase.of("today.plan-breaks." + limit));
        double tons = Units.longTonsFromKg(
                failure.loadShare() * request.train().trailing().massKg());
        double told = Math.floor(tons / LOAD_STEP_TONS) * LOAD_STEP_TONS;
        if (told > 0) {
            said.add(Phrase.of("today.plan-with-load", load.apply(told)));
        }
        if (failure.withMoreTime()) {
            said.add(Phrase.of("today.plan-with-time"));
        }
        return said;
    }
}
