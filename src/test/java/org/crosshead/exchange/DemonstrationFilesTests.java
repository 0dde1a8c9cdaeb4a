package org.crosshead.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.crosshead.route.FeatureKind;
import org.crosshead.route.GradientNotation;
import org.crosshead.route.RouteDraft;
import org.crosshead.stock.FiguresNeeded;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.LocomotiveClassDraft.NoteTopic;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.working.TrainDraft;
import org.junit.jupiter.api.Test;

/** The demonstration railway has in it what it is there to show. */
class DemonstrationFilesTests {

    private static final LocalDate TODAY = LocalDate.of(2030, 5, 6);

    private final ProblemList problems = new ProblemList();
    private final Sheets sheets = CsvReader.read(DemonstrationRailway.files(), problems);
    private final MeasureUnits units = new MeasureUnits(sheets, code -> Optional.empty(), problems);
    private final Moments moments = new Moments(TODAY, ZoneOffset.UTC, problems);

    @Test
    void hasEveryFileWithoutAnyMistake() {
        trains();
        routes();
        new StockReader(sheets, problems).stock();
        new PeopleReader(sheets, moments, problems).people();
        new PlaceReader(sheets, units, moments).restrictions();
        new KnowledgeReader(sheets, units, moments).sections();
        new KnowledgeReader(sheets, units, moments).events();

        assertThat(problems.first()).isEmpty();
        assertThat(ImportFile.values()).allMatch(file -> !sheets.lines(file).isEmpty());
    }

    @Test
    void hasABankOfSeveralMilesNearOneInAHundred() {
        double chains = route("MAIN").gradients().stream()
                .filter(length -> length.notation() == GradientNotation.ONE_IN)
                .filter(length -> length.value() >= 95 && length.value() <= 110)
                .mapToDouble(length -> length.toMeasure() - length.fromMeasure())
                .sum();

        assertThat(chains / 80).isBetween(4.5, 6.0);
        assertThat(route("MAIN").toMeasure()).isEqualTo(4800);
        assertThat(route("MAIN").gradients()).hasSizeGreaterThanOrEqualTo(45);
        assertThat(route("BRANCH").gradients())
                .filteredOn(length -> length.value() != 0)
                .allMatch(length -> length.value() >= 45 && length.value() <= 62);
    }

    @Test
    void hasEveryKindOfFeature() {
        Set<FeatureKind> kinds = routes().stream()
                .flatMap(route -> route.features().stream())
                .map(RouteDraft.Feature::kind)
                .collect(Collectors.toSet());

        assertThat(kinds).containsExactlyInAnyOrder(FeatureKind.values());
    }

    @Test
    void hasALandmarkToBeKnownByDayAtLeastEveryTwoMiles() {
        List<Double> places = route("MAIN").features().stream()
                .filter(feature -> feature.seenByDay())
                .filter(feature -> feature.kind() == FeatureKind.LANDMARK || feature.kind() == FeatureKind.STATION)
                .map(RouteDraft.Feature::atMeasure)
                .sorted(Comparator.naturalOrder())
                .toList();

        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i) - places.get(i - 1)).isLessThanOrEqualTo(160);
        }
    }

    @Test
    void knowsEveryFigureThatAForecastNeedsAndHasANoteOnEveryTopic() {
        for (Located<LocomotiveClassDraft> located :
                new StockReader(sheets, problems).stock().classes()) {
            LocomotiveClassDraft draft = located.draft();
            List<String> known = draft.figures().stream()
                    .filter(figure -> figure.value() != null)
                    .map(SourcedFigure::key)
                    .toList();

            assertThat(FiguresNeeded.ofClass(draft)).allMatch(figure -> known.contains(figure.key()));
            assertThat(draft.notes().stream().map(LocomotiveClassDraft.ClassNote::topic))
                    .containsExactlyInAnyOrderElementsOf(Arrays.asList(NoteTopic.values()));
        }
    }

    @Test
    void hasEightTrainsOfEveryKindOnTheDayOfTheImport() {
        List<TrainDraft> trains =
                trains().stream().filter(train -> train.day().equals(TODAY)).toList();

        assertThat(trains).hasSize(8);
        assertThat(trains.stream().map(TrainDraft::kind).distinct()).hasSize(4);
        assertThat(trains).anyMatch(train -> train.engines().size() == 2);
        assertThat(trains).anyMatch(train -> train.legs().get(0).tenderFirst() && train.formationCode() != null);
        assertThat(trains)
                .anyMatch(train -> train.legs().stream()
                                .map(TrainDraft.Leg::routeCode)
                                .distinct()
                                .count()
                        == 2);
    }

    private List<TrainDraft> trains() {
        return new TrainReader(sheets, units, moments, problems)
                .trains().stream().map(Located::draft).toList();
    }

    private List<RouteDraft> routes() {
        return new RouteReader(sheets, units, problems)
                .routes().stream().map(Located::draft).toList();
    }

    private RouteDraft route(String code) {
        return routes().stream()
                .filter(route -> route.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
