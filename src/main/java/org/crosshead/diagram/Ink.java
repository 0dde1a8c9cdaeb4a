package org.crosshead.diagram;

import java.awt.Color;
import java.util.Map;
import java.util.TreeMap;

/**
 * The colours of a strip as printed on white. Written as plain attributes, so that a style sheet can put others in their
 * place at night.
 */
enum Ink {
    BLACK("#1b1b1b"),
    SOFT("#4a4a4a"),
    RULE("#8a8a8a"),
    GRID("#d5d5d5"),
    PAPER("#ffffff"),
    SPEED("#0b3a5b"),
    SPEED_TINT("#dbe6ee"),
    GROUND("#e9e5dc"),
    GROUND_LINE("#4a4030"),
    STEAM("#2f5d35"),
    STEAM_TINT("#d3dfd4"),
    PRESSURE("#8a2b16"),
    PRESSURE_TINT("#efd9d2"),
    WATER("#16405e"),
    WATER_TINT("#7d9bb0"),
    GLASS_TINT("#d6e3ec");

    final String hex;
    final Color colour;

    Ink(String hex) {
        this.hex = hex;
        this.colour = Color.decode(hex);
    }

    /** How the colour stands in the drawing: black is the ink of the page, whatever it is. */
    String paint() {
        return this == BLACK ? "currentColor" : hex;
    }

    private static final Map<String, String> BY_CANVAS_NAME = byCanvasName();

    private static Map<String, String> byCanvasName() {
        Map<String, String> names = new TreeMap<>(Map.of("white", PAPER.paint()));
        for (Ink ink : values()) {
            Color c = ink.colour;
            names.put("rgb(" + c.getRed() + "," + c.getGreen() + "," + c.getBlue() + ")", ink.paint());
        }
        return Map.copyOf(names);
    }

    /** Returns an attribute of the canvas as it is written; what is no colour of ours stays as it is. */
    static String written(String canvasValue) {
        return BY_CANVAS_NAME.getOrDefault(canvasValue, canvasValue);
    }
}
