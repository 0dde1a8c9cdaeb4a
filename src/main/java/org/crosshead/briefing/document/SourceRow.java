package org.crosshead.briefing.document;

import java.time.Instant;
import org.crosshead.platform.Origin;

/**
 * Where an input came from.
 *
 * @param key key by which steps of figures name it
 * @param what what it is, for example the name of the class and the figure
 * @param value as printed, with its unit
 * @param revision of the record it stands in, for example "class revision 2"
 */
public record SourceRow(
        String key, String what, String value, Origin origin, String note, String revision, String by, Instant at) {}
