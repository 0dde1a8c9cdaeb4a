package org.crosshead.briefing.build;

import java.util.List;
import java.util.Objects;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.WhatIfAnswer.Arrival;
import org.crosshead.briefing.WhatIfAnswer.Lowest;
import org.crosshead.briefing.WhatIfAnswer.Side;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.KeyFigure;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.SupplyRow;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.units.Units;
import org.jspecify.annotations.Nullable;

/** Reads out of a stored briefing what it forecasts. */
final class PlannedSide {

    private static final double LB_PER_CWT = Units.lbFromKg(Units.kgFromCwt(1));
    private static final double HALF_SAMPLE_M = 150;

    private final BriefingDocument document;
    private final Places places;

    PlannedSide(BriefingDocument document, Places places) {
        this.document = document;
        this.places = places;
    }

    /** @throws BriefingRefusedException if the briefing has no forecast */
    Side side() {
        KeyFigure pressure = document.keyFigures().stream()
                .filter(figure -> figure.kind().equals("pressure"))
                .findFirst()
                .orElseThrow(() -> new BriefingRefusedException("what-if-missing"));
        return new Side(
                document.times().stream()
                        .skip(1)
                        .map(row -> new Arrival(row.name(), row.bookedArrival(), row.forecastArrival()))
                        .toList(),
                LB_PER_CWT * used(SupplyRow::coalUsed),
                used(SupplyRow::waterUsed),
                new Lowest(value(pressure.value()), place(pressure)),
                lowestGlass(),
                document.assumptions().stream().anyMatch(phrase -> phrase.kind().equals("assumption.plan")),
                standsAt());
    }

    private interface Used {
        Term of(SupplyRow row);
    }

    /** Returns what the train engine uses from start to end. */
    private double used(Used what) {
        String number = document.heading().engines().get(0).number();
        return document.supplies().stream()
                .filter(row -> row.engineNumber().equals(number))
                .mapToDouble(row -> value(what.of(row)))
                .sum();
    }

    private static double value(Term term) {
        return Objects.requireNonNull(term.value());
    }

    private Place place(KeyFigure figure) {
        return figure.further().stream()
                .flatMap(phrase -> phrase.terms().stream())
                .map(Term::place)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseGet(() -> places.at(0));
    }

    private Lowest lowestGlass() {
        List<Double> glass = document.road().forecast().glassPercent();
        int least = 0;
        for (int i = 1; i < glass.size(); i++) {
            least = glass.get(i) < glass.get(least) ? i : least;
        }
        return new Lowest(
                glass.get(least),
                places.at(document.road().forecast().positionM().get(least)));
    }

    private @Nullable Place standsAt() {
        List<Double> positions = document.road().forecast().positionM();
        boolean arrives = document.times().get(document.times().size() - 1).forecastArrival() != null;
        return arrives ? null : places.at(positions.get(positions.size() - 1));
    }

    /** Returns whether the briefing sets the handles so near here. */
    boolean has(double atM, double regulator, double cutoff) {
        return document.handling().stream()
                .filter(row -> row.regulator() != null && row.cutoff() != null)
                .filter(row -> Math.abs(row.place().positionM() - atM) < HALF_SAMPLE_M)
                .anyMatch(row -> same(row.regulator(), regulator) && (regulator <= 0 || same(row.cutoff(), cutoff)));
    }

    private static boolean same(@Nullable Double one, double other) {
        return one != null && Math.abs(one - other) < 0.01;
    }
}
