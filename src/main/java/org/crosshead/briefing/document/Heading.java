package org.crosshead.briefing.document;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.crosshead.crew.Post;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.jspecify.annotations.Nullable;

/**
 * Which train, who, with what.
 *
 * @param zone the railway's clock, for showing the instants
 * @param formation name of the formation, or null for a light engine
 */
public record Heading(
        String trainCode,
        String title,
        LocalDate day,
        TrainKind kind,
        String fromPlace,
        Instant departs,
        String toPlace,
        Instant arrives,
        String zone,
        List<EngineLine> engines,
        List<CrewLine> crew,
        @Nullable String formation,
        RailState rail,
        String weather,
        boolean dark) {

    public Heading {
        engines = List.copyOf(engines);
        crew = List.copyOf(crew);
    }

    /** An engine of the train. */
    public record EngineLine(
            String number, String name, String className, String position, boolean tenderFirst, String remarks) {}

    /** One of the crew. */
    public record CrewLine(String staffNumber, String name, Post role, String engineNumber) {}
}
