package org.crosshead.briefing.document;

import java.util.List;

/**
 * Holding and starting again at the signals and stations of the path.
 *
 * @param rows those where something must be known, in running order
 * @param plain how many others there are: held by the engine's brake, and started in any position of the cranks
 */
public record Standing(List<StandingRow> rows, int plain) {

    public Standing {
        rows = List.copyOf(rows);
    }
}
