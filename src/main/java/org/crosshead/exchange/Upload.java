package org.crosshead.exchange;

import java.util.function.Supplier;

/**
 * One file to be imported.
 *
 * @param fileName its name, with or without folders before it
 * @param size in bytes; the content is not asked for if it is too large
 */
public record Upload(String fileName, long size, Supplier<byte[]> content) {

    /** A file that is in memory already. */
    public static Upload of(String fileName, byte[] content) {
        byte[] copy = content.clone();
        return new Upload(fileName, copy.length, copy::clone);
    }
}
