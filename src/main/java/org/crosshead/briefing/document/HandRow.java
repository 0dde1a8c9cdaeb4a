package org.crosshead.briefing.document;

import org.jspecify.annotations.Nullable;

/**
 * What an inspector changed in the plan by hand, and what came of it this time.
 *
 * @param kind {@code set}, {@code moved}, {@code struck} or {@code note}
 * @param words what is changed, with its places
 * @param fate {@code applied}, or why it is left out: {@code off-the-path}, {@code no-plan}, {@code nothing-there}, {@code stalls},
 *     {@code not-held}, {@code low-water}, {@code low-pressure}
 * @param limit where the limit is broken for which it is left out; null where it is applied
 * @param cost in coal and time against the run without it; null for a note and for what is left out
 */
public record HandRow(
        long id,
        String kind,
        Phrase words,
        String reason,
        String by,
        String fate,
        @Nullable Place limit,
        @Nullable Phrase cost) {

    /** Says whether the run is made with it. */
    public boolean applied() {
        return fate.equals("applied");
    }
}
