package org.crosshead.diagram;

/**
 * The two sizes in which a strip is drawn. Lengths are in user units, which are pixels at the width named.
 *
 * <p>The wide one is shown from 720 px up, where its small type is 11.2 px; the narrow one below that, where it is 11 px at
 * a screen of 320 px and larger above.
 */
public enum PanelFormat {
    /** Panels of 10 to 15 miles, with the names of the lanes in a gutter on the left. */
    WIDE(736, 84, 30, 12, 13, 0),
    /** Panels of 4 to 6 miles, with the names of the lanes above them. */
    NARROW(336, 8, 28, 12.5, 13.5, 16);

    final double widthPx;
    final double leftPx;
    final double rightPx;
    final double smallPx;
    final double typePx;
    final double captionPx;

    PanelFormat(double widthPx, double leftPx, double rightPx, double smallPx, double typePx, double captionPx) {
        this.widthPx = widthPx;
        this.leftPx = leftPx;
        this.rightPx = rightPx;
        this.smallPx = smallPx;
        this.typePx = typePx;
        this.captionPx = captionPx;
    }

    /** Returns the share of the width left of the distance axis. */
    double leftShare() {
        return leftPx / widthPx;
    }

    /** Returns the share of the width that the distance axis takes. */
    double axisShare() {
        return plotPx() / widthPx;
    }

    double plotPx() {
        return widthPx - leftPx - rightPx;
    }

    boolean captionsAbove() {
        return captionPx > 0;
    }
}
