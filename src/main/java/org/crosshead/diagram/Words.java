package org.crosshead.diagram;

/**
 * A label: words, and smaller ones after them.
 *
 * @param tail set smaller and not bold after the text; may be empty
 */
record Words(String text, double sizePx, boolean bold, String tail, double tailPx) {

    /** Share of the type size that capitals and ascenders rise above the line of writing, in DejaVu Sans. */
    static final double ASCENT = 0.76;

    /** Share of the type size that descenders fall below it. */
    static final double DESCENT = 0.24;

    static Words plain(String text, double sizePx) {
        return new Words(text, sizePx, false, "", sizePx);
    }

    static Words bold(String text, double sizePx) {
        return new Words(text, sizePx, true, "", sizePx);
    }

    Words withTail(String words, double wordsPx) {
        return new Words(text, sizePx, bold, words, wordsPx);
    }

    double widthPx() {
        double width = TextWidths.of(text, sizePx, bold);
        return tail.isEmpty() ? width : width + TextWidths.of(" " + tail, tailPx, false);
    }
}
