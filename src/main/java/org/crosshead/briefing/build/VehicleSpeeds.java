package org.crosshead.briefing.build;

import org.crosshead.briefing.build.TrainInputs.Consist;
import org.crosshead.stock.SourcedFigure;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.figure.FigureUnit;
import org.crosshead.stock.figure.VehicleFigure;
import org.jspecify.annotations.Nullable;

/** The greatest speeds of vehicles, where they are known. */
final class VehicleSpeeds {

    private VehicleSpeeds() {}

    /** Returns the least of the greatest speeds of the kinds in a consist; infinite where none is known. */
    static double leastMps(@Nullable Consist consist) {
        double least = Double.POSITIVE_INFINITY;
        if (consist == null) {
            return least;
        }
        for (VehicleKindRevision kind : consist.kinds().values()) {
            for (SourcedFigure figure : kind.content().figures()) {
                Double value = figure.value();
                if (value != null && figure.accepted() && figure.key().equals(VehicleFigure.MAX_SPEED.key())) {
                    double toSi =
                            FigureUnit.labelled(figure.unit()).orElseThrow().toSi(value);
                    least = Math.min(least, toSi);
                }
            }
        }
        return least;
    }
}
