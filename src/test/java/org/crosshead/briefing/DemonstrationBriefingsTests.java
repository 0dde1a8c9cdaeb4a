package org.crosshead.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.crosshead.briefing.document.BrakingCurve;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Since;
import org.crosshead.briefing.document.Standing;
import org.crosshead.briefing.document.StandingRow;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Recompute;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.platform.NotFoundException;
import org.crosshead.platform.ServiceJob;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.Routes;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.figure.ClassFigure;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Transactional;

/** The briefings of the demonstration railway, from the database to the page. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:briefings;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
class DemonstrationBriefingsTests {

    private static final Set<String> INSPECTOR = Set.of("INSPECTOR");
    /** Valves that lift at 225 psi shut again 3 psi below ({@code SafetyValves}). */
    private static final double SHUT_AGAIN_PSI = 221.9;

    private static final Pattern WHY = Pattern.compile("href=\"#(why-[^\"]+)\"");

    @Autowired
    private Briefings briefings;

    @Autowired
    private Trains trains;

    @Autowired
    private Restrictions restrictions;

    @Autowired
    private Routes routes;

    @Autowired
    private LocomotiveClasses classes;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    private List<TrainSummary> today() {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return trains.between(today.minusDays(1), today);
    }

    private long prepared(long trainId) {
        AtomicLong id = new AtomicLong();
        ServiceJob.run(INSPECTOR, () -> id.set(briefings.prepare(trainId)));
        return id.get();
    }

    private BriefingDocument document(long id) {
        BriefingDocument[] found = new BriefingDocument[1];
        ServiceJob.run(INSPECTOR, () -> found[0] = briefings.show(id).document());
        return found[0];
    }

    private static Figure figure(BriefingDocument document, String key) {
        return Objects.requireNonNull(document.figures().get(key));
    }

    private TrainSummary named(String code) {
        return today().stream()
                .filter(train -> train.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyTrainHasABriefingThatReadsInRunningOrder() {
        assertThat(today()).hasSize(8);
        for (TrainSummary train : today()) {
            BriefingDocument document = document(prepared(train.id()));
            assertThat(document.missing()).as(train.code()).isEmpty();
            assertThat(document.today()).isNotEmpty();
            assertThat(document.keyFigures()).isNotEmpty();
            assertThat(document.handling()).isNotEmpty();
            assertThat(document.handling()).isSortedAccordingTo(Comparator.comparingDouble(HandlingRow::minuteOfRun));
            assertThat(document.times()).hasSizeGreaterThan(1);
            assertThat(document.supplies()).isNotEmpty();
            assertThat(document.notes()).isNotEmpty();
        }
    }

    /** The nine carriages of the morning express take 900 lb of steam an hour, and the briefing says so; the goods take none. */
    @Test
    void heatingOfTheTrainIsCountedAndTold() {
        assertThat(assumption("1X01", "assumption.heating"))
                .hasValueSatisfying(
                        phrase -> assertThat(phrase.terms().get(0).value()).isEqualTo(900.0, within(1e-9)));
        assertThat(assumption("4F12", "assumption.heating")).isEmpty();
    }

    /**
     * Five coaches of 38 t braked weight and an engine of 64 t, together 320.5 tons: 254 t of 325.6 t, 78 per cent. The emergency distance
     * shown is by one of the two rules, whichever is longer, and says by which.
     */
    @Test
    void twoRulesForTheEmergencyDistanceAreWeighedWhereBrakedWeightsAreKnown() {
        assertThat(assumption("2K07", "assumption.braked-weight"))
                .hasValueSatisfying(
                        phrase -> assertThat(phrase.terms().get(0).value()).isCloseTo(78, within(1.5)));
        assertThat(assumption("1X01", "assumption.braked-weight")).isEmpty();
        BriefingDocument document = document(prepared(named("2K07").id()));
        Set<String> rules = document.braking().stream()
                .map(row -> figure(document, "b" + row.number() + ".emergency"))
                .map(figure -> figure.steps().get(0).inputs().get(0).source())
                .collect(Collectors.toSet());
        assertThat(rules).isNotEmpty().isSubsetOf("F1", "SUBSET-026-3");
    }

    private Optional<Phrase> assumption(String train, String kind) {
        return document(prepared(named(train).id())).assumptions().stream()
                .filter(phrase -> phrase.kind().equals(kind))
                .findFirst();
    }

    /** The overloaded vans: home signals on the bank are told, in running order; what the engine's brake does not hold says what would. */
    @Test
    void everySignalAndStationSaysHowTheTrainIsHeldAndStarted() {
        Standing standing =
                Objects.requireNonNull(document(prepared(named("8S60").id())).standing());
        assertThat(standing.rows()).isNotEmpty();
        assertThat(standing.rows())
                .isSortedAccordingTo(Comparator.comparingDouble(
                        (StandingRow row) -> row.place().positionM()));
        for (StandingRow row : standing.rows()) {
            boolean plainStart = row.start().kind().equals("standing.starts");
            boolean plainHold = row.hold().get(0).kind().equals("standing.hold-engine");
            assertThat(plainStart && plainHold).as(row.name()).isFalse();
            assertThat(row.hold()).hasSize(plainHold ? 1 : 2);
            assertThat(row.name()).doesNotContain("distant");
        }
        Standing light =
                Objects.requireNonNull(document(prepared(named("0L36").id())).standing());
        assertThat(light.rows()).isEmpty();
        assertThat(light.plain()).isPositive();
    }

    /** From every braking point the drawn lines begin at the speed counted, and a service application on a dry rail ends before the target. */
    @Test
    void everyBrakingPointShowsHowTheTrainSlows() {
        BriefingDocument document = document(prepared(named("1X01").id()));
        int openAgain = 0;
        for (BrakingRow row : document.braking()) {
            List<BrakingCurve> curves = Objects.requireNonNull(row.curves());
            assertThat(curves).hasSize(4);
            double fromMps = curves.get(0).mps().get(0);
            double targetM = row.targetPlace().positionM() - row.brakeAt().positionM();
            for (BrakingCurve curve : curves) {
                assertThat(curve.mps().get(0)).isEqualTo(fromMps);
                assertThat(curve.metres()).isSorted().hasSameSizeAs(curve.mps());
            }
            List<Double> service = curves.get(0).metres();
            assertThat(service.get(service.size() - 1)).isLessThan(targetM);
            Place clear = row.openAgain();
            if (clear != null) {
                assertThat(row.target()).isNotEqualTo("stop");
                assertThat(clear.positionM()).isGreaterThan(row.targetPlace().positionM() + 100);
                openAgain++;
            }
        }
        assertThat(openAgain).isGreaterThanOrEqualTo(2);
    }

    @Test
    void everyFigureShownCanBeWorkedOutFromItsInputs() {
        int checked = 0;
        for (TrainSummary train : today()) {
            for (var figure : document(prepared(train.id())).figures().values()) {
                Recompute.check(figure);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(500);
    }

    /** What the safety valves blow off is found from mass alone, so that the balance of heat can fail; once they have shut again they take nothing. */
    @Test
    void heatOfTheBoilerBalancesAndTheSafetyValvesOnlyTake() {
        int checked = 0;
        for (var figure : document(prepared(named("1X01").id())).figures().values()) {
            for (Step step : figure.steps()) {
                if (step.name().equals("run.heat")) {
                    double blown = step.inputs().get(3).value();
                    assertThat(blown).isGreaterThan(-1e-3);
                    if (figure.unit().equals("psi") && figure.value() < SHUT_AGAIN_PSI) {
                        assertThat(blown).isCloseTo(0, within(1e-3));
                        checked++;
                    }
                }
            }
        }
        assertThat(checked).isGreaterThan(20);
    }

    /** Numbers that count (of vehicles, axles), limits and shares have their steps too; ordinals of revisions and beats are names. */
    @Test
    void everyNumberInTheSentencesOfTheDayAndTheHeadHasItsSteps() {
        for (TrainSummary train : today()) {
            BriefingDocument document = document(prepared(train.id()));
            Stream<Phrase> sentences = Stream.of(
                            document.today().stream(),
                            document.keyFigures().stream().flatMap(figure -> figure.further().stream()),
                            document.braking().stream().map(row -> row.targetWords()))
                    .flatMap(stream -> stream);
            assertThat(sentences.flatMap(phrase -> phrase.terms().stream()).filter(term -> term.value() != null))
                    .as(train.code())
                    .isNotEmpty()
                    .allSatisfy(term -> assertThat(document.figures()).containsKey(term.figure()));
        }
    }

    @Test
    void sameInputsGiveTheSameFiguresAgain() {
        TrainSummary train = today().get(0);
        BriefingDocument first = document(prepared(train.id()));
        BriefingDocument second = document(prepared(train.id()));
        assertThat(second.figures()).isEqualTo(first.figures());
        assertThat(second.road()).isEqualTo(first.road());
        assertThat(second.inputs()).isEqualTo(first.inputs());
    }

    @Test
    void overloadedTrainIsToldWithItsPlaceAndWhatClearsIt() {
        BriefingDocument document = document(prepared(named("8S60").id()));
        assertThat(document.today().get(0).kind()).isEqualTo("today.stalls");
        double load = figure(document, "load").value();
        assertThat(figure(document, "limit.load").value()).isBetween(0.0, load - 1);
        assertThat(figure(document, "limit.help").value()).isPositive();
        assertThat(document.times().get(document.times().size() - 1).forecastArrival())
                .isNull();
    }

    @Test
    void marginIsAStepOfItsOwnAndServiceIsLongerThanEmergency() {
        BriefingDocument document = document(prepared(named("1X01").id()));
        assertThat(document.braking()).isNotEmpty();
        document.braking().forEach(row -> {
            var service = figure(document, "b" + row.number() + ".service");
            var emergency = figure(document, "b" + row.number() + ".emergency");
            assertThat(service.steps()).anyMatch(step -> step.name().equals("braking.margin"));
            assertThat(service.value()).isGreaterThan(emergency.value());
            double yards = (row.targetPlace().positionM() - row.brakeAt().positionM()) / 0.9144;
            assertThat(yards).isCloseTo(service.value(), within(30.0));
        });
    }

    /** Two reductions so near to each other that the brake is let go for the first and has not recovered for the second. */
    @Test
    @Transactional
    void brakeThatHasNotRecoveredIsCountedWithTheForceItHas() {
        ServiceJob.run(INSPECTOR, () -> {
            restrictions.enter(reduction("T-910", 4_240, 45));
            restrictions.enter(reduction("T-911", 4_297, 55));
        });
        BriefingDocument document = document(prepared(named("1X01").id()));
        BrakingRow second = document.braking().stream()
                .filter(row -> row.warnings().stream().anyMatch(w -> w.kind().equals("braking.warning.not-recovered")))
                .findFirst()
                .orElseThrow();
        double left = figure(document, "b" + second.number() + ".left").value() / 100;
        assertThat(left).isBetween(0.2, 0.95);
        BrakingRow whole = document.braking().stream()
                .filter(row -> row.warnings().isEmpty())
                .filter(row -> figure(document, "b" + row.number() + ".speed").value()
                        == figure(document, "b" + second.number() + ".speed").value())
                .findFirst()
                .orElseThrow();
        double share = brakeN(document, second) / brakeN(document, whole);
        assertThat(share).isCloseTo(left, within(0.03));
        assertThat(second.brakeAt().positionM()).isLessThan(second.targetPlace().positionM() - 500);
    }

    private double brakeN(BriefingDocument document, BrakingRow row) {
        return figure(document, "b" + row.number() + ".service").steps().get(0).inputs().stream()
                .filter(input -> input.symbol().equals("brake"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private RestrictionDraft reduction(String number, double fromChains, double mph) {
        return new RestrictionDraft(
                number,
                "MAIN",
                fromChains,
                fromChains + 10,
                mph,
                SpeedUnit.MPH,
                Scope.BOTH,
                clock.instant().minus(Duration.ofDays(1)),
                clock.instant().plus(Duration.ofDays(2)),
                "Drainage work");
    }

    /** On the line measured in kilometres distances are metres, on the others yards. */
    @Test
    void distancesAreToldInTheMeasureOfTheRoad() {
        BriefingDocument document = document(prepared(named("2K07").id()));
        Set<String> units = document.braking().stream()
                .map(row -> figure(document, "b" + row.number() + ".service").unit() + " on "
                        + row.brakeAt().routeCode())
                .collect(Collectors.toSet());
        assertThat(units).contains("m on KLINE").doesNotContain("yd on KLINE", "m on MAIN", "m on BRANCH");
    }

    @Test
    void cabSheetTellsEveryBrakingPointAndTheStartByItself() throws Exception {
        long id = prepared(named("1X01").id());
        String page = mvc.perform(
                        get("/briefings/{id}/cab", id).with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("Start: cocks open, 75", "Shut off steam", "Brake: 20");
        BriefingDocument document = document(id);
        int lines = page.split("<tr class=", -1).length - 1;
        assertThat(lines)
                .isBetween(
                        document.braking().size(),
                        document.handling().size() + document.braking().size());
    }

    @Test
    void howSureIsToldWhereTheTrainArrivesAndNowhereElse() {
        BriefingDocument express = document(prepared(named("1X01").id()));
        Sureness sure = Objects.requireNonNull(express.sureness());
        assertThat(sure.runs()).isEqualTo(200);
        assertThat(sure.sentences()).extracting(Phrase::kind).contains("sure.pressure", "sure.water", "sure.coal");
        assertThat(sure.arrivals()).hasSize(express.times().size() - 1).allSatisfy(arrival -> {
            assertThat(arrival.early()).isBeforeOrEqualTo(arrival.middle());
            assertThat(arrival.middle()).isBeforeOrEqualTo(arrival.late());
            assertThat(arrival.lateRuns()).isBetween(0, 200);
        });
        Sureness.Along along = sure.along();
        for (int i = 0; i < along.positionM().size(); i++) {
            assertThat(along.pressureLowPsi().get(i))
                    .isLessThanOrEqualTo(along.pressureHighPsi().get(i));
            assertThat(along.glassLowPercent().get(i))
                    .isLessThanOrEqualTo(along.glassHighPercent().get(i));
        }
        assertThat(document(prepared(named("8S60").id())).sureness()).isNull();
    }

    @Test
    void firemansWorkAddsUpToWhatTheEngineUses() {
        BriefingDocument express = document(prepared(named("1X01").id()));
        FiremanPlan fireman = Objects.requireNonNull(express.fireman());
        assertThat(fireman.rows()).hasSize(express.times().size() - 1);
        double onTheRoadLb = fireman.rows().stream()
                .mapToDouble(row -> Objects.requireNonNull(row.coal().value()))
                .sum();
        double usedCwt = express.supplies().stream()
                .mapToDouble(row -> Objects.requireNonNull(row.coalUsed().value()))
                .sum();
        assertThat(onTheRoadLb).isBetween(0.9 * 112 * usedCwt, 112 * usedCwt);
        assertThat(fireman.rounds()).hasSize((int) Math.floor(112 * usedCwt / 100));
        assertThat(fireman.feeds())
                .isNotEmpty()
                .allSatisfy(feed -> assertThat(feed.toM()).isGreaterThan(feed.fromM()));
    }

    @Test
    void everySettingUnderSteamSaysWhatToDoIfItIsNotAsPlanned() {
        BriefingDocument express = document(prepared(named("1X01").id()));
        assertThat(express.handling())
                .filteredOn(row -> Set.of("notch-up", "let-out", "open-up").contains(row.action()))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.ifNot()).isNotNull());
    }

    @Test
    void dayThatIsNotAsPlannedIsToldBesideThePlannedOne() throws Exception {
        long id = prepared(named("1X01").id());
        WhatIfAnswer[] answer = new WhatIfAnswer[2];
        ServiceJob.run(INSPECTOR, () -> {
            answer[0] = briefings.whatIf(id, new WhatIf(100, RailState.DRY, 0, 100));
            answer[1] = briefings.whatIf(id, new WhatIf(130, RailState.DRY, 10, 90));
        });
        assertThat(answer[0].otherwise().arrivals())
                .isEqualTo(answer[0].planned().arrivals());
        assertThat(answer[0].otherwise().coalLb()).isCloseTo(answer[0].planned().coalLb(), within(0.5));
        assertThat(answer[0].otherwise().waterGallons())
                .isCloseTo(answer[0].planned().waterGallons(), within(0.5));
        assertThat(answer[0].otherwise().pressurePsi())
                .isEqualTo(answer[0].planned().pressurePsi());
        assertThat(answer[0].otherwise().glassPercent().value())
                .isCloseTo(answer[0].planned().glassPercent().value(), within(1.0));
        assertThat(answer[0].settings()).isNotEmpty();
        assertThat(answer[1].planned()).isEqualTo(answer[0].planned());
        assertThat(answer[1].otherwise().glassPercent().value()).isPositive();
        assertThat(answer[1].otherwise().coalLb())
                .isGreaterThan(answer[1].planned().coalLb());
        WhatIfAnswer.Arrival late = answer[1].otherwise().arrivals().get(0);
        assertThat(Objects.requireNonNull(late.forecast()))
                .isAfter(Objects.requireNonNull(
                        answer[1].planned().arrivals().get(0).forecast()));
        String page = mvc.perform(get("/briefings/{id}/what-if", id)
                        .param("load", "100")
                        .param("rail", "WET")
                        .param("late", "5")
                        .param("pressure", "95")
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("What comes of it", "Lowest boiler pressure");
    }

    private WhatIfAnswer whatIf(
            long id, WhatIf.EngineDay engine, WhatIf.@Nullable Stop stop, WhatIf.@Nullable Slow slow) {
        WhatIfAnswer[] answer = new WhatIfAnswer[1];
        ServiceJob.run(
                INSPECTOR,
                () -> answer[0] = briefings.whatIf(id, new WhatIf(100, RailState.DRY, 0, engine, stop, slow)));
        return answer[0];
    }

    private String trainEngine(long id) {
        String[] number = new String[1];
        ServiceJob.run(
                INSPECTOR,
                () -> number[0] =
                        briefings.show(id).document().heading().engines().get(0).number());
        return number[0];
    }

    /** Asks for a stop in the middle and says whether it is refused in words; anything else that goes wrong fails the test. */
    private boolean isRefused(long id, double stopM) {
        boolean[] refused = new boolean[1];
        ServiceJob.run(INSPECTOR, () -> {
            try {
                briefings.whatIf(
                        id,
                        new WhatIf(
                                100,
                                RailState.DRY,
                                0,
                                new WhatIf.EngineDay(100, 100, 100, null, false, null),
                                new WhatIf.Stop(stopM, 2),
                                null));
            } catch (BriefingRefusedException ex) {
                refused[0] = true;
            }
        });
        return refused[0];
    }

    @Test
    void stopsThatCannotBeAreRefused() {
        long branch = prepared(named("2B51").id());
        for (double wrongM : new double[] {-500, 0, 1e7, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThat(isRefused(branch, wrongM)).as("stop at %s", wrongM).isTrue();
        }
        boolean someTrainTurns = false;
        for (TrainSummary train : today()) {
            if (trains.find(train.id()).orElseThrow().content().legs().size() < 2) {
                continue;
            }
            long id = prepared(train.id());
            for (double reversalM : reversalsM(document(id))) {
                someTrainTurns = true;
                assertThat(isRefused(id, reversalM + 60)).as(train.code()).isTrue();
                isRefused(id, reversalM + 300);
            }
        }
        assertThat(someTrainTurns).isTrue();
    }

    /** Returns where the path goes on in the other direction over the same route. */
    private static List<Double> reversalsM(BriefingDocument document) {
        List<Road.Measure> measures = document.road().measures();
        return IntStream.range(1, measures.size())
                .filter(i ->
                        measures.get(i).routeCode().equals(measures.get(i - 1).routeCode())
                                && measures.get(i).rising()
                                        != measures.get(i - 1).rising())
                .mapToObj(i -> measures.get(i).fromM())
                .toList();
    }

    private static Duration laterAtTheEnd(WhatIfAnswer answer) {
        int last = answer.planned().arrivals().size() - 1;
        return Duration.between(
                Objects.requireNonNull(answer.planned().arrivals().get(last).forecast()),
                Objects.requireNonNull(answer.otherwise().arrivals().get(last).forecast()));
    }

    @Test
    void engineCoalHelpStopAndRestrictionOfAnotherDayCount() {
        long id = prepared(named("1X01").id());
        WhatIf.EngineDay booked = new WhatIf.EngineDay(100, 100, 100, null, false, null);
        double planned = whatIf(id, booked, null, null).otherwise().coalLb();
        WhatIfAnswer poorCoal = whatIf(id, new WhatIf.EngineDay(100, 80, 100, null, false, null), null, null);
        assertThat(poorCoal.otherwise().coalLb()).isGreaterThan(1.1 * planned);
        WhatIfAnswer clinkered = whatIf(id, new WhatIf.EngineDay(100, 100, 60, null, false, null), null, null);
        assertThat(laterAtTheEnd(clinkered)).isGreaterThan(Duration.ofMinutes(5));
        WhatIfAnswer tenderFirst = whatIf(id, new WhatIf.EngineDay(100, 100, 100, null, true, null), null, null);
        assertThat(laterAtTheEnd(tenderFirst)).isGreaterThan(Duration.ofMinutes(2));
        WhatIfAnswer low = whatIf(id, new WhatIf.EngineDay(62, 100, 100, null, false, null), null, null);
        assertThat(low.noPlan()).extracting(Phrase::kind).contains("today.plan-breaks.starts-low");
        WhatIf.Help help = new WhatIf.Help("215", "Grindlewick", "Corbel Top");
        WhatIfAnswer helped = whatIf(id, new WhatIf.EngineDay(100, 100, 100, null, false, help), null, null);
        assertThat(helped.otherwise().glassPercent().value())
                .isGreaterThan(helped.planned().glassPercent().value() + 2);
        assertThat(helped.otherwise().coalLb()).isLessThan(1.02 * planned);
        WhatIfAnswer stopped = whatIf(id, booked, new WhatIf.Stop(80_000, 10), null);
        assertThat(laterAtTheEnd(stopped)).isGreaterThan(Duration.ofMinutes(5));
        WhatIfAnswer slow = whatIf(id, booked, null, new WhatIf.Slow(80_000, 86_000, 10));
        assertThat(laterAtTheEnd(slow)).isGreaterThan(Duration.ofMinutes(5));
        for (WhatIf.EngineDay wrong : List.of(
                new WhatIf.EngineDay(100, 100, 100, "no such engine", false, null),
                new WhatIf.EngineDay(
                        100, 100, 100, null, false, new WhatIf.Help(trainEngine(id), "Grindlewick", "Corbel Top")),
                new WhatIf.EngineDay(
                        100, 100, 100, null, false, new WhatIf.Help("215", "Corbel Top", "Grindlewick")))) {
            ServiceJob.run(
                    INSPECTOR,
                    () -> assertThatThrownBy(
                                    () -> briefings.whatIf(id, new WhatIf(100, RailState.DRY, 0, wrong, null, null)))
                            .isInstanceOf(BriefingRefusedException.class));
        }
    }

    @Test
    void unlikelyDayIsRefusedInWords() throws Exception {
        long id = prepared(named("2B51").id());
        for (String load : List.of("900", "", "heavy", "NaN")) {
            mvc.perform(get("/briefings/{id}/what-if", id)
                            .param("load", load)
                            .param("rail", "DRY")
                            .param("late", "0")
                            .param("pressure", "100")
                            .with(user("inspector").roles("INSPECTOR")))
                    .andExpect(status().isOk())
                    .andExpect(content().string(containsString("from 20 to 200 per cent")));
        }
        mvc.perform(get("/briefings/{id}/what-if", id).with(user("stranger").roles("DRIVER")))
                .andExpect(status().isNotFound());
    }

    @Test
    void isFrozenWhenIssuedAndMarkedWhenAnInputChanges() {
        TrainSummary train = named("2B51");
        long id = prepared(train.id());
        ServiceJob.run(INSPECTOR, () -> {
            briefings.issue(id, "");
            assertThat(briefings.show(id).issueNumber()).isEqualTo(1);
            assertThat(briefings.show(id).outOfDate()).isEmpty();
            BriefingDocument before = briefings.show(id).document();
            restrictions.enter(new RestrictionDraft(
                    "T-900",
                    "BRANCH",
                    8,
                    30,
                    15,
                    SpeedUnit.MPH,
                    Scope.BOTH,
                    clock.instant().minus(Duration.ofDays(1)),
                    clock.instant().plus(Duration.ofDays(2)),
                    "Embankment under watch"));
            assertThat(briefings.show(id).outOfDate())
                    .extracting(phrase -> phrase.kind())
                    .contains("out-of-date.restriction-new");
            assertThat(briefings.show(id).document()).isEqualTo(before);
            long next = briefings.prepare(train.id());
            briefings.issue(next, "");
            assertThat(briefings.show(next).issueNumber()).isEqualTo(2);
            Since since = Objects.requireNonNull(briefings.show(next).document().since());
            assertThat(since.issueNumber()).isEqualTo(1);
            assertThat(since.changes())
                    .extracting(Since.Change::kind)
                    .contains("today-new", "braking-new")
                    .doesNotContain("crew", "formation", "booked");
            assertThat(briefings.show(id).state()).isEqualTo(BriefingState.REPLACED);
            assertThatExceptionOfType(BriefingRefusedException.class)
                    .isThrownBy(() -> briefings.issue(next, ""))
                    .satisfies(ex -> assertThat(ex.code()).isEqualTo("not-prepared"));
        });
    }

    @Test
    void briefingThatNamesADangerIsIssuedOnlyWithAReason() {
        long id = prepared(named("8S60").id());
        ServiceJob.run(INSPECTOR, () -> {
            assertThat(briefings.show(id).document().dangers()).isNotEmpty();
            assertThatExceptionOfType(BriefingRefusedException.class)
                    .isThrownBy(() -> briefings.issue(id, "  no "))
                    .satisfies(ex -> assertThat(ex.code()).isEqualTo("danger"));
            assertThat(briefings.show(id).issueNumber()).isNull();
            briefings.issue(id, "Assistance is ordered");
            assertThat(briefings.show(id).issuedDespite()).isEqualTo("Assistance is ordered");
        });
    }

    @Test
    void engineOnACurveSharperThanItsClassMayPassIsToldAsADanger() {
        LocomotiveClassDraft before = classes.current("T3").orElseThrow().content();
        List<SourcedFigure> stiffer = before.figures().stream()
                .map(figure -> figure.key().equals(ClassFigure.MIN_CURVE.key())
                        ? new SourcedFigure(figure.key(), 11.0, "ch", figure.origin(), figure.note(), true)
                        : figure)
                .toList();
        ServiceJob.run(INSPECTOR, () -> {
            classes.enter(with(before, stiffer), "stiffer for a test");
            BriefingDocument document =
                    briefings.show(briefings.prepare(named("2B51").id())).document();
            classes.enter(before, "as before");
            assertThat(document.dangers())
                    .filteredOn(danger -> danger.kind().equals("today.curve"))
                    .singleElement()
                    .satisfies(danger -> {
                        assertThat(danger.terms().get(0).text()).isEqualTo("31");
                        assertThat(danger.terms().get(2).value()).isCloseTo(10.0, within(0.01));
                        assertThat(danger.terms().get(3).value()).isCloseTo(11.0, within(0.01));
                    });
        });
    }

    /** With hardly any pressure to spare the heavy express falls below it on the bank whoever is at the handles. */
    @Test
    void boilerBelowTheLeastOfItsClassIsToldAsADanger() {
        LocomotiveClassDraft before = classes.current("E4").orElseThrow().content();
        List<SourcedFigure> stricter = before.figures().stream()
                .map(figure -> figure.key().equals(ClassFigure.BOILER_PRESSURE_LEAST.key())
                        ? new SourcedFigure(figure.key(), 202.0, "psi", figure.origin(), figure.note(), true)
                        : figure)
                .toList();
        ServiceJob.run(INSPECTOR, () -> {
            classes.enter(with(before, stricter), "stricter for a test");
            BriefingDocument document =
                    briefings.show(briefings.prepare(named("1X01").id())).document();
            classes.enter(before, "as before");
            boolean falls = document.road().forecast().pressurePsi().stream().anyMatch(psi -> psi < 202);
            assertThat(document.dangers().stream()
                            .anyMatch(danger -> danger.kind().equals("today.low-pressure")))
                    .isEqualTo(falls);
            assertThat(falls).isTrue();
        });
    }

    /** The board of T-101 stands 40 chains before it and is seen 220 yd off: the express must brake before. */
    @Test
    void warningBoardWithinTheServiceDistanceIsTold() {
        BriefingDocument document = document(prepared(named("1X01").id()));
        BrakingRow row = document.braking().stream()
                .filter(braking -> braking.target().equals("temporary"))
                .findFirst()
                .orElseThrow();
        Phrase late = row.warnings().stream()
                .filter(warning -> warning.kind().equals("braking.warning.board-late"))
                .findFirst()
                .orElseThrow();
        double seenM = row.targetPlace().positionM() - 40 * 20.1168 - 220 * 0.9144;
        double toldYd = Objects.requireNonNull(late.terms().get(1).value());
        assertThat(toldYd).isCloseTo((seenM - row.brakeAt().positionM()) / 0.9144, within(1.0));
    }

    @Test
    void stopsAreComparedWithTheTramwayRuleWhereTheRailwayWorksByIt() {
        long trainId = named("1X01").id();
        assertThat(warnings(trainId)).noneMatch(kind -> kind.startsWith("braking.warning.tramway"));
        jdbc.sql(
                        "insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner, valid_from, approved_by)"
                                + " values ('braking.tramway-table', 2, 2, '', 'ESTIMATED', 'for a test', 'T', date '2021-01-01', 'U')")
                .update();
        try {
            assertThat(warnings(trainId)).contains("braking.warning.tramway-faster");
        } finally {
            jdbc.sql("delete from policy_figure where policy_key = 'braking.tramway-table' and policy_version = 2")
                    .update();
        }
    }

    private List<String> warnings(long trainId) {
        return document(prepared(trainId)).braking().stream()
                .flatMap(row -> row.warnings().stream())
                .map(Phrase::kind)
                .toList();
    }

    private static final Set<String> BRAKES =
            Set.of(ClassFigure.ENGINE_BRAKE_FORCE.key(), ClassFigure.TENDER_BRAKE_FORCE.key());

    /** With hardly any brake left a light engine is not held on the bank, nor by its brake where it stands. */
    @Test
    void brakeThatDoesNotHoldOnAFallIsToldAsADanger() {
        LocomotiveClassDraft before = classes.current("T3").orElseThrow().content();
        ServiceJob.run(INSPECTOR, () -> {
            classes.enter(with(before, braked(before, 1.2)), "weak for a test");
            List<Phrase> weak = briefings
                    .show(briefings.prepare(named("0L36").id()))
                    .document()
                    .today();
            classes.enter(with(before, braked(before, 4)), "less weak for a test");
            List<Phrase> slow = briefings
                    .show(briefings.prepare(named("0L36").id()))
                    .document()
                    .today();
            classes.enter(before, "as before");
            assertThat(weak).extracting(Phrase::kind).contains("today.not-braked-on-fall", "today.engine-brake-alone");
            assertThat(slow).extracting(Phrase::kind).contains("today.runaway");
        });
    }

    /** With hardly any brake on the engine the night wagons are held on a fall by pinned hand brakes, whose number is told. */
    @Test
    void pinnedBrakesAreToldWhereTheWorkingBrakeDoesNotHoldWagons() {
        LocomotiveClassDraft before = classes.current("M2").orElseThrow().content();
        ServiceJob.run(INSPECTOR, () -> {
            classes.enter(with(before, braked(before, 1)), "weak for a test");
            BriefingDocument weak =
                    briefings.show(briefings.prepare(named("6U20").id())).document();
            classes.enter(before, "as before");
            assertThat(weak.today())
                    .filteredOn(phrase -> phrase.kind().equals("today.pin-down"))
                    .singleElement()
                    .satisfies(phrase -> {
                        assertThat(phrase.terms().get(2).value()).isBetween(1.0, 30.0);
                        Recompute.check(figure(weak, "today.pins"));
                    });
        });
    }

    /** The railway's table of hand brakes is met besides the balance of forces: 31 wagons, a chart that asks for 5 of up to 60, and 4 pinned. */
    @Test
    void handBrakesOfTheRailwaysOwnTableAreTold() {
        BriefingDocument night = document(prepared(named("6U20").id()));
        Figure told = figure(night, "today.left-standing");
        Recompute.check(told);
        Step rule = told.steps().get(told.steps().size() - 1);
        assertThat(rule.name()).isEqualTo("hand-brakes.rule");
        assertThat(rule.inputs())
                .filteredOn(input -> input.symbol().equals("rule"))
                .singleElement()
                .satisfies(input -> assertThat(input.value()).isEqualTo(5));
        assertThat(told.value()).isEqualTo(5);
        assertThat(night.today())
                .filteredOn(phrase -> phrase.kind().equals("today.pin-down-rule"))
                .singleElement()
                .satisfies(phrase -> assertThat(phrase.terms().get(2).value()).isEqualTo(4));
    }

    private static List<SourcedFigure> braked(LocomotiveClassDraft draft, double tonf) {
        return draft.figures().stream()
                .map(figure -> BRAKES.contains(figure.key())
                        ? new SourcedFigure(figure.key(), tonf, "tonf", figure.origin(), figure.note(), true)
                        : figure)
                .toList();
    }

    /** From the speed told a stop is made with the margin between seeing the distant and the next signal, from the full speed not. */
    @Test
    void distantSignalSeenTooLateIsToldWithASpeed() {
        BriefingDocument document = document(prepared(named("1X01").id()));
        Phrase told = document.today().stream()
                .filter(phrase -> phrase.kind().equals("today.distant"))
                .findFirst()
                .orElseThrow();
        assertThat(told.terms().get(0).value()).isEqualTo(5.0);
        assertThat(told.terms().get(1).text()).isEqualTo("Dapplemere Down distant");
        // 54 chains from the signal to the next, and no sighting distance is stored.
        assertThat(told.terms().get(3).value()).isCloseTo(54 * 22, within(0.5));
        assertThat(told.terms().get(4).value()).isBetween(45.0, 59.0);
    }

    private static LocomotiveClassDraft with(LocomotiveClassDraft draft, List<SourcedFigure> figures) {
        return new LocomotiveClassDraft(
                draft.code(),
                draft.name(),
                draft.description(),
                draft.tenderEngine(),
                draft.valveFamily(),
                draft.engineBrake(),
                draft.trainBrake(),
                figures,
                draft.notes());
    }

    @Test
    void assistingEngineHasPointsOfItsOwn() {
        BriefingDocument document = document(prepared(named("1A40").id()));
        assertThat(document.handling())
                .filteredOn(row -> row.action().startsWith("assist-"))
                .extracting(HandlingRow::action)
                .containsExactly("assist-begin", "assist-end");
        HandlingRow begins = document.handling().stream()
                .filter(row -> row.action().equals("assist-begin"))
                .findFirst()
                .orElseThrow();
        assertThat(begins.words().terms().get(0).text()).isEqualTo("36");
        assertThat(begins.place().measure()).isCloseTo(22 * 80 + 50, within(0.5));
    }

    @Test
    void waterOfATroughIsSaidNotToCount() {
        assertThat(document(prepared(named("1X01").id())).assumptions())
                .filteredOn(phrase -> phrase.kind().equals("assumption.trough"))
                .singleElement()
                .satisfies(phrase -> assertThat(phrase.terms().get(0).text()).isEqualTo("Dapplemere trough"));
    }

    @Test
    void estimatedGradientsAreNamedWhereTheyCount() {
        assertThat(document(prepared(named("2K07").id())).assumptions())
                .filteredOn(phrase -> phrase.kind().equals("assumption.gradient-estimated"))
                .singleElement()
                .satisfies(phrase -> assertThat(phrase.terms())
                        .extracting(term -> term.text())
                        .containsExactly("3.400 km", "0.600 km", "", "KLINE"));
        assertThat(document(prepared(named("1X01").id())).assumptions())
                .noneMatch(phrase -> phrase.kind().endsWith("-estimated"));
    }

    @Test
    void estimatesOfTheRoadThatNobodyAcceptedLeaveTheBriefingIncomplete() {
        RouteDraft before = routes.current("KLINE").orElseThrow().content();
        RouteDraft waiting = new RouteDraft(
                before.code(),
                before.name(),
                before.measureUnit(),
                before.risingName(),
                before.fallingName(),
                before.fromMeasure(),
                before.toMeasure(),
                before.lines(),
                before.gradients(),
                before.curves(),
                before.limits(),
                before.features(),
                false);
        ServiceJob.run(INSPECTOR, () -> {
            int number = routes.enter(waiting, "for a test").number();
            long id = briefings.prepare(named("2K07").id());
            BriefingDocument document = briefings.show(id).document();
            assertThat(document.missing()).extracting(Phrase::kind).containsExactly("missing.gradient-estimated");
            assertThat(document.handling()).isEmpty();
            assertThatExceptionOfType(BriefingRefusedException.class).isThrownBy(() -> briefings.issue(id, ""));
            routes.acceptEstimates("KLINE", number);
            assertThat(briefings
                            .show(briefings.prepare(named("2K07").id()))
                            .document()
                            .missing())
                    .isEmpty();
        });
    }

    @Test
    void crewAreRefusedTheBriefingOfAnotherTrainByItsAddress() throws Exception {
        Cookie driver = Objects.requireNonNull(mvc.perform(post("/login")
                        .param("username", "driver")
                        .param("password", "demonstration")
                        .with(csrf()))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getCookie("SESSION"));
        TrainSummary own = today().stream()
                .filter(train -> train.staffNumbers().contains("D-01"))
                .findFirst()
                .orElseThrow();
        TrainSummary other = today().stream()
                .filter(train -> !train.staffNumbers().contains("D-01"))
                .findFirst()
                .orElseThrow();
        long ownBriefing = issued(own);
        long otherBriefing = issued(other);

        mvc.perform(get("/briefings/{id}", ownBriefing).cookie(driver)).andExpect(status().isOk());
        mvc.perform(get("/trains/{id}", own.id()).cookie(driver)).andExpect(status().isOk());
        mvc.perform(get("/briefings/{id}", otherBriefing).cookie(driver)).andExpect(status().isNotFound());
        mvc.perform(get("/trains/{id}", other.id()).cookie(driver)).andExpect(status().isForbidden());
        mvc.perform(post("/briefings/{id}/acknowledgements", otherBriefing)
                        .param("clientId", "x")
                        .param("deviceTime", "2030-05-06T08:00:00Z")
                        .cookie(driver)
                        .with(csrf()))
                .andExpect(status().isNotFound());
    }

    private long issued(TrainSummary train) {
        long id = prepared(train.id());
        ServiceJob.run(INSPECTOR, () -> briefings.issue(id, "invented for a test"));
        return id;
    }

    @Test
    void crewDoNotSeeWhatIsOnlyPrepared() {
        long id = prepared(today().get(0).id());
        ServiceJob.run(
                Set.of("DRIVER"),
                () -> assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> briefings.show(id)));
    }

    @Test
    void everyNumberOnThePageLeadsToItsStepsAndThePageHoldsNoToken() throws Exception {
        long id = prepared(named("2K07").id());
        String page = mvc.perform(
                        get("/briefings/{id}", id).with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher links = WHY.matcher(page);
        int count = 0;
        while (links.find()) {
            assertThat(page).contains("id=\"" + links.group(1) + "\"");
            count++;
        }
        assertThat(count).isGreaterThan(30);
        Matcher anchors = Pattern.compile("href=\"#([^\"]+)\"").matcher(page);
        while (anchors.find()) {
            assertThat(page).contains("id=\"" + anchors.group(1) + "\"");
        }
        assertThat(page).doesNotContain("_csrf").doesNotContain(" style=\"").doesNotContain("??");
    }

    @Test
    void preparingAsksForATokenAndTheRightPost() throws Exception {
        long train = today().get(0).id();
        mvc.perform(post("/briefings")
                        .param("train", String.valueOf(train))
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isForbidden());
        mvc.perform(post("/briefings")
                        .param("train", String.valueOf(train))
                        .with(csrf())
                        .with(user("driver").roles("DRIVER")))
                .andExpect(status().isForbidden());
        mvc.perform(post("/briefings")
                        .param("train", String.valueOf(train))
                        .with(csrf())
                        .with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().is3xxRedirection());
    }

    @Test
    void unknownBriefingIsNotFound() throws Exception {
        mvc.perform(get("/briefings/999999").with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isNotFound());
    }
}
