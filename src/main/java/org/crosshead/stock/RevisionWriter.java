package org.crosshead.stock;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;

/** Stores a revision after the current one, with one journal entry. Callers hold the transaction. */
@Component
class RevisionWriter {

    private final RevisionStore store;
    private final Clock clock;
    private final CurrentActor actor;
    private final Journal journal;

    RevisionWriter(RevisionStore store, Clock clock, CurrentActor actor, Journal journal) {
        this.store = store;
        this.clock = clock;
        this.actor = actor;
        this.journal = journal;
    }

    /**
     * Returns the id of the stored revision. A figure that has not changed keeps who entered it and when.
     *
     * @throws StockChangedException if the current revision is not the one expected, or changes at the same moment
     */
    long write(NewRevision revision) {
        RevisionTables tables = revision.tables();
        RevisionStore.Head head = head(revision);
        if (revision.expected() != null && revision.expected() != head.number()) {
            throw new StockChangedException(revision.code());
        }
        List<FigureEntry> before =
                head.number() == 0 || tables.figures.isEmpty() ? List.of() : store.currentFigures(tables, head.id());
        if (!store.advance(tables, head)) {
            throw new StockChangedException(revision.code());
        }
        Stamp stamp = new Stamp(
                clock.instant().truncatedTo(ChronoUnit.MICROS), actor.get().name(), revision.reason());
        long id = store.insertRevision(tables, head, stamp, revision.columns());
        store.insertFigures(tables, id, entries(revision.figures(), before, stamp));
        journal(revision, head);
        return id;
    }

    private RevisionStore.Head head(NewRevision revision) {
        return store.head(revision.tables(), revision.code()).orElseGet(() -> {
            try {
                return store.insertHead(revision.tables(), revision.code());
            } catch (DuplicateKeyException ex) {
                throw new StockChangedException(revision.code());
            }
        });
    }

    private static List<FigureEntry> entries(List<SourcedFigure> figures, List<FigureEntry> before, Stamp stamp) {
        return figures.stream()
                .map(figure -> before.stream()
                        .filter(entry -> entry.figure().equals(figure))
                        .findFirst()
                        .orElseGet(() -> new FigureEntry(figure, stamp.at(), stamp.by())))
                .toList();
    }

    private void journal(NewRevision revision, RevisionStore.Head head) {
        String subject = revision.tables().head.replace('_', '-').toLowerCase(Locale.ROOT);
        String change = head.number() == 0 ? ".entered" : ".revised";
        journal.write(subject + change, subject, head.id(), revision.code() + ": " + revision.reason());
    }
}
