package org.crosshead.briefing.build;

import java.util.Optional;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.braking.TramwayRetardation;

/** Compares an emergency stop with the tramway ordinance that a railway works by, where its policy says so. */
final class TramwayRule {

    private final Workings workings;
    private final Optional<TramwayRetardation> table;

    TramwayRule(Workings workings) {
        this.workings = workings;
        double number = workings.inputs().policyValue(Policy.TRAMWAY_TABLE);
        table = number == 1
                ? Optional.of(TramwayRetardation.TABLE_1)
                : number == 2 ? Optional.of(TramwayRetardation.TABLE_2) : Optional.empty();
    }

    /**
     * Returns what is said of a stop, if anything.
     *
     * @param brakedM from where the handle is moved to the stand
     * @param key begins the keys of its figures
     */
    Optional<Phrase> warning(String key, double fromMps, double brakedM, double atM) {
        if (table.isEmpty()) {
            return Optional.empty();
        }
        TramwayRetardation rule = table.get();
        if (fromMps > rule.greatestMps()) {
            return Optional.of(Phrase.of(
                    "braking.warning.tramway-faster",
                    Term.number(
                            workings.speeds().value(rule.greatestMps(), atM),
                            workings.speeds().unit(atM))));
        }
        double slope = workings.model()
                .request()
                .road()
                .track()
                .gradients()
                .meanGradient(atM, Math.max(brakedM, workings.model().body().lengthM()));
        double allowedM = rule.stopsInM(fromMps, slope);
        return brakedM <= allowedM
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "braking.warning.tramway",
                        workings.book()
                                .given(
                                        key + "tramway",
                                        allowedM / workings.speeds().distanceUnitM(atM),
                                        workings.speeds().distanceUnit(atM),
                                        "STRABVO")));
    }
}
