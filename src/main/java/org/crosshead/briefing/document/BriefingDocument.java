package org.crosshead.briefing.document;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.crosshead.kernel.figure.Figure;
import org.jspecify.annotations.Nullable;

/**
 * A briefing as it is stored: all its inputs and figures, frozen when issued.
 *
 * @param schema version of this structure, now 4; 1 lacks {@code since}, 1 and 2 lack {@code standing} and {@code atDanger}, 1 to 3
 *     lack {@code sureness}, {@code byHand} and {@code fireman}
 * @param madeFrom records and their revisions
 * @param missing what keeps it from being complete; empty when complete
 * @param today the sentences that matter today, those that matter most first
 * @param figures every figure shown, by key
 * @param inputs what is needed to compute it again, as stored by the builder
 * @param since what is different from the issue that was in force when it was made; null for the first
 * @param atDanger braking points for stop signals at danger, in running order; null where nothing could be computed
 * @param standing holding and starting again; null where nothing could be computed
 * @param byHand what an inspector changed in the plan; null in a document of an earlier schema
 * @param fireman the fireman's work; null where nothing could be computed
 * @param sureness what comes of days that differ; null where the train does not arrive on the day as forecast
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
        Inputs inputs,
        @Nullable Since since,
        @Nullable Standing standing,
        @Nullable List<BrakingRow> atDanger,
        @Nullable Sureness sureness,
        @Nullable List<HandRow> byHand,
        @Nullable FiremanPlan fireman) {

    public static final int SCHEMA = 4;

    /** Kinds of sentences of the day that name a danger: with one of them a briefing is issued only with a reason. */
    private static final Set<String> DANGERS = Set.of(
            "today.stalls",
            "today.stalls-no-help",
            "today.not-held",
            "today.momentum",
            "today.low-water",
            "today.low-pressure",
            "today.crown-bare",
            "today.tank-empty",
            "today.no-coal",
            "today.brake-mismatch",
            "today.runaway",
            "today.not-braked-on-fall",
            "today.pin-down-short",
            "today.curve");

    /** What the kinds of those sentences begin with that a driver reads first, danger or not. */
    private static final Set<String> LEADING =
            Set.of("today.hardest", "today.easy", "today.may-stand", "today.starts-", "today.does-not-start");

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
        atDanger = atDanger == null ? null : List.copyOf(atDanger);
        byHand = byHand == null ? null : List.copyOf(byHand);
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** Returns what an inspector changed in the plan by hand. */
    public List<HandRow> changedByHand() {
        return byHand == null ? List.of() : byHand;
    }

    /** Returns the sentences of the day that name a danger. */
    public List<Phrase> dangers() {
        return today.stream()
                .filter(sentence -> DANGERS.contains(sentence.kind()))
                .toList();
    }

    /** Returns what stands before anything else: the dangers, what limits the run, and where not to be stopped. */
    public List<Phrase> leading() {
        return today.stream().filter(BriefingDocument::leads).toList();
    }

    /** Returns the sentences of the day that do not stand first. */
    public List<Phrase> following() {
        return today.stream().filter(sentence -> !leads(sentence)).toList();
    }

    /** Returns the number of the first of them in the list of the day. */
    public int followingFrom() {
        return leading().size() + 1;
    }

    /** Returns what the gauge shows of an application as it is counted, which stands with the braking points too. */
    public List<Phrase> readings() {
        return assumptions.stream()
                .filter(phrase -> phrase.kind().startsWith("assumption.reading"))
                .toList();
    }

    private static boolean leads(Phrase sentence) {
        return DANGERS.contains(sentence.kind())
                || LEADING.stream().anyMatch(start -> sentence.kind().startsWith(start));
    }

    /** Returns this briefing with what is different from an issue before. */
    public BriefingDocument compared(Since difference) {
        return new BriefingDocument(
                schema,
                heading,
                madeAt,
                madeBy,
                madeFrom,
                missing,
                today,
                keyFigures,
                road,
                handling,
                braking,
                times,
                supplies,
                notes,
                assumptions,
                sources,
                figures,
                inputs,
                difference,
                standing,
                atDanger,
                sureness,
                byHand,
                fireman);
    }
}
