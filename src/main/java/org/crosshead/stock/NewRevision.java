package org.crosshead.stock;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A revision about to be stored.
 *
 * @param expected number of the revision that the person had before them (0: none yet), or null where nobody looked at one
 * @param columns what its row holds beside number, maker and reason
 */
record NewRevision(
        RevisionTables tables,
        String code,
        @Nullable Integer expected,
        String reason,
        Map<String, Object> columns,
        List<SourcedFigure> figures) {

    NewRevision {
        columns = Map.copyOf(columns);
        figures = List.copyOf(figures);
    }
}
