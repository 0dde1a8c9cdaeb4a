package org.crosshead.diagram;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Widths of words in DejaVu Sans, so that labels are kept apart in the same way on every machine, whatever fonts it has. The
 * common fonts of tablets run narrower.
 */
final class TextWidths {

    private static final double UNITS_PER_EM = 2048;
    private static final int WIDEST = 1993;

    private static final TextWidths DEJAVU_SANS = read("dejavu-sans-widths.csv");

    private final Map<Integer, int[]> advances;

    private TextWidths(Map<Integer, int[]> advances) {
        this.advances = advances;
    }

    /** Returns the width of a text at this size of type. */
    static double of(String text, double sizePx, boolean bold) {
        int column = bold ? 1 : 0;
        double units = text.codePoints()
                .map(c -> DEJAVU_SANS.advances.getOrDefault(c, new int[] {WIDEST, WIDEST})[column])
                .sum();
        return units * sizePx / UNITS_PER_EM;
    }

    private static TextWidths read(String resource) {
        Map<Integer, int[]> advances = new HashMap<>();
        InputStream in = Objects.requireNonNull(TextWidths.class.getResourceAsStream(resource), resource);
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines().filter(line -> Character.isDigit(line.charAt(0))).forEach(line -> {
                String[] cells = line.split(",", -1);
                advances.put(
                        Integer.valueOf(cells[0]), new int[] {Integer.parseInt(cells[1]), Integer.parseInt(cells[2])});
            });
        } catch (IOException ex) {
            throw new UncheckedIOException(ex);
        }
        return new TextWidths(advances);
    }
}
