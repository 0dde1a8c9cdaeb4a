package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.crosshead.briefing.document.KeyFigure;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;
import org.crosshead.kernel.motion.RunOutcome;
import org.crosshead.kernel.track.GradientProfile;
import org.crosshead.kernel.traction.LimitedBy;
import org.crosshead.kernel.units.Units;
import org.crosshead.route.PathLimit;
import org.crosshead.stock.FormationFigures;
import org.jspecify.annotations.Nullable;

/** Makes what stands first: the sentences that matter most today, and four figures. */
final class SummaryMaker {

    /** Kinds of standing, the worst last. */
    private static final List<String> WORSE =
            List.of("STARTS", "STARTS_SET_BACK", "STARTS_WITH_SAND", "DOES_NOT_START");

    private static final double BANK = 1.0 / 200;
    private static final double PERCENT = 100;
    /** From this share of the runs on it is told first that the train may not get up. */
    private static final double OFTEN = 0.05;

    private final Workings workings;
    private final Road road;

    @Nullable
    private final Sureness sureness;

    SummaryMaker(Workings workings, Road road, @Nullable Sureness sureness) {
        this.workings = workings;
        this.sureness = sureness;
        this.road = road;
    }

    List<Phrase> today() {
        List<Phrase> today = new ArrayList<>(new Warnings(workings).found());
        if (workings.outcome() instanceof RunOutcome.Stalls stalls) {
            today.add(new StallFigures(workings, stalls).sentence());
        } else if (workings.outcome() instanceof RunOutcome.NotHeld notHeld) {
            today.add(Phrase.of(
                    "today.not-held",
                    workings.place(notHeld.positionM()),
                    workings.limit("today.allowed", notHeld.allowedMps(), notHeld.positionM())));
        } else {
            today.add(hardest());
            mayStand().ifPresent(today::add);
            new TimesMaker(workings).shortTime().ifPresent(today::add);
            if (workings.plan() == null) {
                today.addAll(new NoPlan(
                                workings.model()
                                        .request()
                                        .marked(workings.places().marksM()),
                                workings.places(),
                                tons -> workings.book().given("today.plan-load", tons, "tons", "search:plan-load"))
                        .sentences());
            }
        }
        today.add(standing());
        today.addAll(new BrakeSentences(workings).found());
        new SlipMaker(workings).told().ifPresent(today::add);
        for (PathLimit limit : workings.inputs().path().limits()) {
            if (limit.source() == PathLimit.Source.TEMPORARY) {
                today.add(Phrase.of(
                        "today.restriction",
                        Term.text(limit.number()),
                        workings.book()
                                .given(
                                        "today.restriction-" + limit.number(),
                                        limit.limit(),
                                        BrakingMaker.unit(limit),
                                        "route:restriction"),
                        workings.place(limit.fromM()),
                        workings.place(limit.toM())));
            }
        }
        new FallSentences(workings).parked().ifPresent(today::add);
        return today;
    }

    /** Says that the train comes to a stand on many days, where it does. */
    private Optional<Phrase> mayStand() {
        return sureness == null
                ? Optional.empty()
                : sureness.sentences().stream()
                        .filter(sentence -> sentence.kind().equals("sure.stands"))
                        .filter(sentence -> isOften(sentence.terms().get(0).value()))
                        .map(sentence -> new Phrase("today.may-stand", sentence.terms()))
                        .findFirst();
    }

    private boolean isOften(@Nullable Double runs) {
        return runs != null && sureness != null && runs >= OFTEN * sureness.runs();
    }

    private Phrase hardest() {
        int slowest = slowestOnBank();
        Run run = workings.run();
        if (slowest < 0) {
            int lowest = run.lowestPressure(0);
            return Phrase.of("today.easy", workings.book().pressure("today.pressure", run, lowest, 0));
        }
        LimitedBy limit = run.limitedBy(slowest).orElse(LimitedBy.CYLINDER);
        return Phrase.of(
                "today.hardest." + limit.name().toLowerCase(Locale.ROOT),
                workings.place(run.positionM(slowest)),
                workings.speed("today.hardest", slowest),
                workings.book()
                        .fromRun(
                                "today.cutoff",
                                new FigureBook.Reading("run.cutoff", run.cutoff(slowest), "", 1 / PERCENT, "%"),
                                run,
                                slowest),
                workings.book().pressure("today.pressure", run, slowest, 0));
    }

    private int slowestOnBank() {
        Run run = workings.run();
        GradientProfile profile = workings.model().request().road().track().gradients();
        double lengthM = workings.model().body().lengthM();
        int found = -1;
        for (int i = 1; i + 1 < run.size(); i++) {
            boolean climbs = profile.meanGradient(run.positionM(i), lengthM) > BANK
                    && run.regulator(i) > 0
                    && run.speedMps(i + 1) <= run.speedMps(i) + 0.01
                    && run.speedMps(i) > 1;
            if (climbs && (found < 0 || run.speedMps(i) < run.speedMps(found))) {
                found = i;
            }
        }
        return found;
    }

    private Phrase standing() {
        List<Road.Band> poor = road.standing().stream()
                .filter(band -> !band.kind().equals("STARTS"))
                .toList();
        if (poor.isEmpty()) {
            return Phrase.of("today.starts-everywhere");
        }
        Road.Band longest = poor.get(0);
        for (Road.Band band : poor) {
            boolean worse = WORSE.indexOf(band.kind()) > WORSE.indexOf(longest.kind());
            boolean longer = band.toM() - band.fromM() > longest.toM() - longest.fromM()
                    && band.kind().equals(longest.kind());
            longest = worse || longer ? band : longest;
        }
        String kind = switch (longest.kind()) {
            case "DOES_NOT_START" -> "today.does-not-start";
            case "STARTS_WITH_SAND" -> "today.starts-with-sand";
            default -> "today.starts-set-back";
        };
        return Phrase.of(kind, workings.place(longest.fromM()), workings.place(longest.toM()));
    }

    List<KeyFigure> keyFigures() {
        List<KeyFigure> figures = new ArrayList<>();
        FormationFigures.Resolved consist = workings.model().consist();
        if (consist != null) {
            figures.add(new KeyFigure("load", load(consist), loadFurther(consist)));
        }
        figures.add(new RestartLoad(workings).figure());
        figures.add(water());
        figures.add(pressure());
        new CrownMaker(workings).figure().ifPresent(figures::add);
        return figures;
    }

    private Term load(FormationFigures.Resolved consist) {
        Step step = new Step(
                StepKind.FORMULA,
                "load.tons",
                "mass / ton",
                List.of(
                        new Input("mass", consist.massKg(), "kg", "formation:mass"),
                        new Input("ton", Units.kgFromLongTons(1), "kg", "UNITS")),
                consist.massKg() / Units.kgFromLongTons(1),
                "tons",
                "UNITS");
        return workings.book().put("load", Figure.of(List.of(step)));
    }

    private List<Phrase> loadFurther(FormationFigures.Resolved consist) {
        List<Phrase> further = new ArrayList<>();
        further.add(Phrase.of(
                "key-figure.vehicles", given("vehicles", consist.vehicles().size(), "")));
        boolean axlesKnown =
                consist.vehicles().stream().noneMatch(vehicle -> vehicle.axles().isEmpty());
        if (axlesKnown) {
            int axles = consist.vehicles().stream()
                    .mapToInt(vehicle -> vehicle.axles().orElseThrow())
                    .sum();
            further.add(Phrase.of("key-figure.axles", given("axles", axles, "")));
        }
        further.add(Phrase.of("key-figure.length", given("length", Units.feetFromMetres(consist.lengthM()), "ft")));
        double brakedKg = consist.vehicles().stream()
                .filter(FormationFigures.Vehicle::braked)
                .mapToDouble(FormationFigures.Vehicle::massKg)
                .sum();
        Step braked = new Step(
                StepKind.FORMULA,
                "load.braked",
                "braked / mass * 100",
                List.of(
                        new Input("braked", brakedKg, "kg", "formation:braked"),
                        new Input("mass", consist.massKg(), "kg", "formation:mass")),
                brakedKg / consist.massKg() * PERCENT,
                "%",
                "ARITHMETIC");
        further.add(Phrase.of("key-figure.braked", workings.book().put("load.braked", Figure.of(List.of(braked)))));
        return further;
    }

    /** A number that the formation sums to. */
    private Term given(String what, double value, String unit) {
        return workings.book().given("load." + what, value, unit, "formation:" + what);
    }

    private KeyFigure water() {
        Run run = workings.run();
        int least = run.lowestTankWater(0);
        double gallonKg = Units.kgFromGallons(1);
        double startKg = run.tankWaterKg(0, 0);
        double usedKg = run.tankUsedKg(least, 0);
        double takenKg = run.tankWaterKg(least, 0) - startKg + usedKg;
        Step step = new Step(
                StepKind.FORMULA,
                "tank.least",
                "(start - used + taken) / gallon",
                List.of(
                        new Input("start", startKg, "kg", "train:tank"),
                        new Input("used", usedKg, "kg", "run:fed"),
                        new Input("taken", takenKg, "kg", "run:supplies"),
                        new Input("gallon", gallonKg, "kg", "UNITS")),
                (startKg - usedKg + takenKg) / gallonKg,
                "gal",
                "ARITHMETIC");
        Term term = workings.book().put("tank.least", Figure.of(List.of(step)));
        return new KeyFigure("tank", term, List.of(Phrase.of("key-figure.at", workings.place(run.positionM(least)))));
    }

    private KeyFigure pressure() {
        Run run = workings.run();
        int least = run.lowestPressure(0);
        Term term = workings.book().pressure("pressure.least", run, least, 0);
        return new KeyFigure(
                "pressure", term, List.of(Phrase.of("key-figure.at", workings.place(run.positionM(least)))));
    }
}
