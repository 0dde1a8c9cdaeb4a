package org.crosshead.exchange.web;

import java.time.ZoneId;
import java.util.List;
import org.crosshead.exchange.ImportFile;
import org.crosshead.exchange.ImportProblem;

/**
 * What the page shows: the form, what was refused, and what the files look like.
 *
 * @param problems the first of what is wrong
 * @param total how much is wrong in all
 */
record ImportPage(String reason, List<ImportProblem> problems, int total, ZoneId zone) {

    ImportPage {
        problems = List.copyOf(problems);
    }

    public List<ImportFile> files() {
        return List.of(ImportFile.values());
    }
}
