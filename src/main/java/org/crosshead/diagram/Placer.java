package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for labels in a lane: each is put at the first of its lines where it meets no earlier one, shifted sideways by
 * as little as will do; where nothing does, it is left out. Place the weightier ones first.
 */
final class Placer {

    private static final double GAP_X_PX = 4;
    private static final double GAP_Y_PX = 0.5;
    private static final double SHIFT_STEP_PX = 4;

    private final double leftPx;
    private final double rightPx;
    private final List<Box> taken = new ArrayList<>();

    /** Ground that a label covers. */
    record Box(double left, double top, double right, double bottom) {

        boolean meets(Box other) {
            return left < other.right + GAP_X_PX
                    && other.left < right + GAP_X_PX
                    && top < other.bottom + GAP_Y_PX
                    && other.top < bottom + GAP_Y_PX;
        }
    }

    /** Where a label has been put: the middle of its line of writing. */
    record Spot(double x, double y) {}

    Placer(double leftPx, double rightPx) {
        this.leftPx = leftPx;
        this.rightPx = rightPx;
    }

    /** Keeps labels off this ground. */
    void block(double left, double top, double right, double bottom) {
        taken.add(new Box(left, top, right, bottom));
    }

    /**
     * Places a label about x on one of the lines, the first the most wanted.
     *
     * @param shiftPx how far it may stand to the side of x
     */
    Optional<Spot> place(Words words, double x, double shiftPx, double... lines) {
        double width = words.widthPx();
        if (width > rightPx - leftPx) {
            return Optional.empty();
        }
        for (double shift = 0; shift <= shiftPx; shift += SHIFT_STEP_PX) {
            for (double y : lines) {
                for (double side : shift == 0 ? new double[] {1} : new double[] {1, -1}) {
                    double middle = Math.min(Math.max(x + side * shift, leftPx + width / 2), rightPx - width / 2);
                    if (Math.abs(middle - x) <= shiftPx + width / 2 && take(words, middle, y)) {
                        return Optional.of(new Spot(middle, y));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private boolean take(Words words, double middle, double y) {
        double half = words.widthPx() / 2;
        Box box = new Box(
                middle - half, y - Words.ASCENT * words.sizePx(), middle + half, y + Words.DESCENT * words.sizePx());
        if (taken.stream().anyMatch(box::meets)) {
            return false;
        }
        taken.add(box);
        return true;
    }
}
