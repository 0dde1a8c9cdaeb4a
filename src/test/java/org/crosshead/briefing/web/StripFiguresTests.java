package org.crosshead.briefing.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.diagram.StripModel;
import org.crosshead.diagram.StripModel.Fill;
import org.crosshead.diagram.StripModel.MarkKind;
import org.crosshead.diagram.StripModel.WorkKind;
import org.junit.jupiter.api.Test;

/** What of a briefing's road the strip is given, on an invented road. */
class StripFiguresTests {

    private final StripModel model = StripFigures.of(RoadFixtures.eightMiles(), RoadWords.packed());

    @Test
    void postsFallWhereTheMeasureFalls() {
        assertThat(model.ticks()).hasSize(9);
        assertThat(model.ticks().get(0).label()).isEqualTo("10m");
        assertThat(model.ticks().get(8).label()).isEqualTo("2m");
        assertThat(model.ticks().get(1).positionM()).isCloseTo(RoadFixtures.metres(1), within(1e-6));
    }

    @Test
    void limitInTheOtherUnitBearsItAndStandsAtItsHeight() {
        assertThat(model.speedUnit()).isEqualTo("mph");
        assertThat(model.limits()).extracting(StripModel.Limit::label).containsExactly("60", "20", "80 km/h");
        assertThat(model.limits().get(2).speed()).isCloseTo(80 / 1.609344, within(1e-9));
        assertThat(model.limits()).extracting(StripModel.Limit::temporary).containsExactly(false, true, false);
    }

    @Test
    void gradientsReadAsPrinted() {
        assertThat(model.slopes())
                .extracting(StripModel.Slope::label)
                .containsExactly("level", "1 in 87", "12.5 \u2030");
    }

    @Test
    void hazardsAreNamedByWhatTheyAre() {
        assertThat(model.marks())
                .filteredOn(mark -> mark.kind() == MarkKind.HAZARD)
                .extracting(StripModel.Mark::name)
                .containsExactly("catch points");
        assertThat(model.marks())
                .filteredOn(mark -> mark.kind() == MarkKind.CROSSING)
                .extracting(StripModel.Mark::name)
                .containsExactly("Marsh Lane");
    }

    @Test
    void controlsHoldFromChangeToChange() {
        assertThat(model.settings()).extracting(StripModel.Setting::label).containsExactly("75", "25", "25", "shut");
        assertThat(model.settings())
                .extracting(StripModel.Setting::regulatorLabel)
                .containsExactly("half open", "half open", "wide open", "");
        assertThat(model.settings().get(3).toM()).isCloseTo(RoadFixtures.metres(8), within(1e-6));
        assertThat(model.braking()).hasSize(1);
        assertThat(model.braking().get(0).fromM()).isCloseTo(RoadFixtures.metres(7), within(1e-6));
    }

    @Test
    void standingIsToldApartByItsFill() {
        assertThat(model.standing())
                .extracting(StripModel.Stretch::fill)
                .containsExactly(Fill.OPEN, Fill.DOTTED, Fill.SOLID);
    }

    @Test
    void firemansWorkStandsWhereHisPlanHasIt() {
        FiremanPlan plan = new FiremanPlan(
                List.of(500.0, 900.0),
                List.of(new FiremanPlan.Stretch(1_000, 2_000)),
                List.of(new FiremanPlan.Stretch(3_000, 3_500)),
                List.of());
        List<StripModel.Work> work = FiremanWork.of(plan);
        assertThat(work)
                .extracting(StripModel.Work::kind)
                .containsExactly(WorkKind.FIRE, WorkKind.FIRE, WorkKind.INJECTOR, WorkKind.BLOWER);
        assertThat(work.get(1).fromM()).isEqualTo(900).isEqualTo(work.get(1).toM());
        assertThat(work.get(2).toM()).isEqualTo(2_000);
        assertThat(FiremanWork.of(null)).isEmpty();
    }
}
