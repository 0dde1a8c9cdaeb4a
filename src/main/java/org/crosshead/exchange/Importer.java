package org.crosshead.exchange;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.crosshead.briefing.PolicyDraft;
import org.crosshead.platform.Origin;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Routes;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Imports several files at once, all of it or nothing. */
@Service
public class Importer {

    private final DraftEntry entry;
    private final Routes routes;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final ZoneId zone;

    Importer(DraftEntry entry, Routes routes, PlatformTransactionManager transactions, Clock clock, ZoneId zone) {
        this.entry = entry;
        this.routes = routes;
        this.transaction = new TransactionTemplate(transactions);
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * Stores everything that the files say, as its own services would.
     *
     * @param reason kept with every revision made
     * @throws ImportRefusedException if anything in any file is wrong; nothing is stored then
     */
    @PreAuthorize("hasAnyRole('INSPECTOR', 'MANAGER')")
    public Imported enter(List<Upload> uploads, String reason) {
        ProblemList problems = new ProblemList();
        Sheets sheets = CsvReader.read(uploads, problems);
        problems.throwIfFilesBroken();
        ImportPlan plan = plan(sheets, problems);
        problems.throwIfAny();
        transaction.executeWithoutResult(status -> {
            entry.enter(plan, reason, problems);
            problems.throwIfAny();
        });
        return new Imported(Stream.of(ImportFile.values())
                .filter(file -> !sheets.lines(file).isEmpty())
                .map(file ->
                        new Imported.Count(file.fileName(), sheets.lines(file).size()))
                .toList());
    }

    private ImportPlan plan(Sheets sheets, ProblemList problems) {
        MeasureUnits units = new MeasureUnits(sheets, this::storedUnit, problems);
        Moments moments = new Moments(LocalDate.now(clock.withZone(zone)), zone, problems);
        PlaceReader places = new PlaceReader(sheets, units, moments);
        return new ImportPlan(
                new ImportPlan.Lines(
                        new RouteReader(sheets, units, problems).routes(), places.junctions(), places.restrictions()),
                new StockReader(sheets, problems).stock(),
                new PeopleReader(sheets, moments, problems).people(),
                new TrainReader(sheets, units, moments, problems).trains(),
                new ImportPlan.Knowledge(
                        new KnowledgeReader(sheets, units, moments).sections(),
                        new KnowledgeReader(sheets, units, moments).cues(),
                        new KnowledgeReader(sheets, units, moments).guides(),
                        new KnowledgeReader(sheets, units, moments).events()),
                sheets.lines(ImportFile.POLICY_FIGURES).stream()
                        .map(line -> policy(line, moments))
                        .toList());
    }

    private static Located<PolicyDraft> policy(Line line, Moments moments) {
        PolicyDraft draft = new PolicyDraft(
                line.text("key"),
                line.number("value"),
                line.word("origin", Origin.class),
                line.text("source"),
                line.text("owner"),
                moments.day(line, "valid_from"));
        return new Located<>(draft, line, Map.of());
    }

    private Optional<MeasureUnit> storedUnit(String routeCode) {
        return routes.current(routeCode).map(route -> route.content().measureUnit());
    }
}
