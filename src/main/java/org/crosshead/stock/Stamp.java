package org.crosshead.stock;

import java.time.Instant;

/** Who makes a revision, when and why. */
record Stamp(Instant at, String by, String reason) {}
