package org.crosshead.briefing.build;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.crosshead.briefing.Policy;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.scatter.Bands;
import org.crosshead.kernel.scatter.ScatteredRuns;
import org.crosshead.kernel.scatter.Spread;
import org.crosshead.kernel.traction.LocomotiveParameters.Boiler;
import org.crosshead.kernel.units.Units;
import org.crosshead.working.TrainDraft;
import org.jspecify.annotations.Nullable;

/** Makes what says how sure the forecast is, where the train arrives in it. */
final class SurenessMaker {

    private static final int RUNS = 200;
    private static final double TOLD_SHARE = 0.05;
    private static final double PER_CENT = 100;
    private static final double PSI_PLACES = 10;

    private final Workings workings;

    SurenessMaker(Workings workings) {
        this.workings = workings;
    }

    Optional<Sureness> made() {
        if (!(workings.outcome() instanceof RunOutcome.Arrives)) {
            return Optional.empty();
        }
        Bands bands = new ScatteredRuns(
                        workings.model().request(), workings.run(), workings.plan(), spread(workings.inputs()))
                .bands(RUNS);
        return Optional.of(new Sureness(RUNS, sentences(bands), arrivals(bands), along(bands)));
    }

    static Spread spread(TrainInputs inputs) {
        return new Spread(
                inputs.policyValue(Policy.SCATTER + "coal-heat"),
                inputs.policyValue(Policy.SCATTER + "adhesion"),
                inputs.policyValue(Policy.SCATTER + "resistance"),
                inputs.policyValue(Policy.SCATTER + "load"),
                inputs.policyValue(Policy.SCATTER + "wind"),
                inputs.policyValue(Policy.SCATTER + "action"),
                Units.paFromPsi(inputs.policyValue(Policy.SCATTER + "pressure-reading")),
                inputs.policyValue(Policy.SCATTER + "glass-reading"));
    }

    private List<Phrase> sentences(Bands bands) {
        List<Phrase> sentences = new ArrayList<>();
        if (bands.standsM().isEmpty()) {
            sentences.add(Phrase.of("sure.arrives", figure("runs", RUNS, "")));
        } else {
            double middleM = bands.standsM().get(bands.standsM().size() / 2);
            sentences.add(Phrase.of(
                    "sure.stands",
                    figure("stands", bands.standsM().size(), ""),
                    figure("runs", RUNS, ""),
                    workings.place(middleM)));
        }
        if (bands.lowWaterDays() > 0) {
            sentences.add(Phrase.of(
                    "sure.low-water", figure("low-water", bands.lowWaterDays(), ""), figure("runs", RUNS, "")));
        }
        sentences.add(
                least("pressure", Units.psiFromPa(bands.leastPressurePa()), "psi", lowestM(bands, bands.pressurePa())));
        sentences.add(least("water", glass(bands.leastWaterKg()), "%", lowestM(bands, bands.waterKg())));
        int last = bands.placesM().size() - 1;
        sentences.add(Phrase.of(
                "sure.coal",
                figure("coal-low", Units.lbFromKg(bands.coalKg().low().get(last)), "lb"),
                figure("coal-high", Units.lbFromKg(bands.coalKg().high().get(last)), "lb")));
        eased(bands).ifPresent(sentences::add);
        return sentences;
    }

    /** Returns what nine runs in ten do not fall below anywhere, and about where they come nearest to it. */
    private Phrase least(String what, double value, String unit, double atM) {
        return Phrase.of("sure." + what, figure(what, Math.floor(value), unit), workings.place(atM));
    }

    /** Returns where a band is lowest; the start where nothing is known further on. */
    private static double lowestM(Bands bands, Bands.Band band) {
        int least = 0;
        for (int i = 1; i < band.low().size(); i++) {
            least = band.low().get(i) < band.low().get(least) ? i : least;
        }
        return bands.placesM().get(least);
    }

    /** Returns where the driver has to ease most often for the rail, where it is often enough to be told. */
    private Optional<Phrase> eased(Bands bands) {
        int most = 0;
        for (int i = 1; i < bands.easedDays().size(); i++) {
            most = bands.easedDays().get(i) > bands.easedDays().get(most) ? i : most;
        }
        int days = bands.easedDays().get(most);
        return days < TOLD_SHARE * RUNS
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "sure.eased",
                        figure("eased", days, ""),
                        figure("runs", RUNS, ""),
                        workings.place(bands.placesM().get(most))));
    }

    private Term figure(String what, double value, String unit) {
        return workings.book().given("sure." + what, value, unit, "scatter:runs");
    }

    private double glass(double waterKg) {
        Boiler boiler = workings.model().engine(0).parameters().boiler();
        return PER_CENT * boiler.glassShare(waterKg);
    }

    private List<Sureness.Arrival> arrivals(Bands bands) {
        List<TrainDraft.Call> calls = workings.inputs().content().calls();
        return bands.calls().stream()
                .map(arrival -> new Sureness.Arrival(
                        calls.get(arrival.call()).place(),
                        moment(arrival.lowS()),
                        moment(arrival.middleS()),
                        moment(arrival.highS()),
                        arrival.lateDays()))
                .toList();
    }

    private @Nullable Instant moment(double seconds) {
        return Double.isNaN(seconds) ? null : workings.model().startsAt().plusSeconds(Math.round(seconds));
    }

    private Sureness.Along along(Bands bands) {
        int[] known = IntStream.range(0, bands.placesM().size())
                .filter(i -> !bands.pressurePa().low().get(i).isNaN())
                .toArray();
        return new Sureness.Along(
                values(known, bands.placesM(), DoubleUnaryOperator.identity(), 1),
                values(known, bands.pressurePa().low(), Units::psiFromPa, PSI_PLACES),
                values(known, bands.pressurePa().high(), Units::psiFromPa, PSI_PLACES),
                values(known, bands.waterKg().low(), this::glass, PSI_PLACES),
                values(known, bands.waterKg().high(), this::glass, PSI_PLACES));
    }

    private static List<Double> values(int[] known, List<Double> all, DoubleUnaryOperator shown, double perUnit) {
        return IntStream.of(known)
                .mapToObj(i -> Math.round(shown.applyAsDouble(all.get(i)) * perUnit) / perUnit)
                .toList();
    }
}
