package org.crosshead.briefing.document;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.crosshead.kernel.figure.Figure;

/**
 * A briefing as it is stored: all its inputs and figures, frozen when issued.
 *
 * @param schema version of this structure, now 1
 * @param madeFrom records and their revisions
 * @param missing what keeps it from being complete; empty when complete
 * @param today the two or three sentences that matter most today
 * @param figures every figure shown, by key
 * @param inputs what is needed to compute it again, as stored by the builder
 */
public record BriefingDocument(
        int schema,
        Heading heading,
        Instant madeAt,
        String madeBy,
        List<Phrase> madeFrom,
        List<Phrase> missing,
        List<Phrase> today,
        List<KeyFigure> keyFigures,
        Road road,
        List<HandlingRow> handling,
        List<BrakingRow> braking,
        List<TimeRow> times,
        List<SupplyRow> supplies,
        List<NoteRow> notes,
        List<Phrase> assumptions,
        List<SourceRow> sources,
        Map<String, Figure> figures,
        Inputs inputs) {

    public static final int SCHEMA = 1;

    public BriefingDocument {
        madeFrom = List.copyOf(madeFrom);
        missing = List.copyOf(missing);
        today = List.copyOf(today);
        keyFigures = List.copyOf(keyFigures);
        handling = List.copyOf(handling);
        braking = List.copyOf(braking);
        times = List.copyOf(times);
        supplies = List.copyOf(supplies);
        notes = List.copyOf(notes);
        assumptions = List.copyOf(assumptions);
        sources = List.copyOf(sources);
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }
}
