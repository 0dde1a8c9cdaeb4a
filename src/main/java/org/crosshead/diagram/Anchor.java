package org.crosshead.diagram;

/** Which part of a label stands at its place. */
enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    final String svg;
    final double share;

    Anchor(String svg, double share) {
        this.svg = svg;
        this.share = share;
    }
}
