package org.crosshead.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * A line through points in pixels, thinned to those that are needed.
 *
 * @param x rising or equal, from the left of the plot
 */
record Polyline(List<Double> x, List<Double> y) {

    Polyline {
        x = List.copyOf(x);
        y = List.copyOf(y);
    }

    int size() {
        return x.size();
    }

    /** Returns the line through as few of the points as keep it within the tolerance (after Douglas and Peucker, 1973). */
    Polyline thinned(double tolerancePx) {
        if (size() < 3) {
            return this;
        }
        boolean[] kept = new boolean[size()];
        kept[0] = true;
        kept[size() - 1] = true;
        keep(0, size() - 1, tolerancePx, kept);
        List<Double> xs = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            if (kept[i]) {
                xs.add(x.get(i));
                ys.add(y.get(i));
            }
        }
        return new Polyline(xs, ys);
    }

    private void keep(int first, int last, double tolerancePx, boolean[] kept) {
        int farthest = -1;
        double farthestPx = tolerancePx;
        for (int i = first + 1; i < last; i++) {
            double distancePx = distancePx(i, first, last);
            if (distancePx > farthestPx) {
                farthestPx = distancePx;
                farthest = i;
            }
        }
        if (farthest > 0) {
            kept[farthest] = true;
            keep(first, farthest, tolerancePx, kept);
            keep(farthest, last, tolerancePx, kept);
        }
    }

    private double distancePx(int i, int first, int last) {
        double dx = x.get(last) - x.get(first);
        double dy = y.get(last) - y.get(first);
        double toX = x.get(i) - x.get(first);
        double toY = y.get(i) - y.get(first);
        double length = Math.sqrt(dx * dx + dy * dy);
        return length == 0 ? Math.sqrt(toX * toX + toY * toY) : Math.abs(dx * toY - dy * toX) / length;
    }

    /** Returns the height of the line at this place, or NaN beside it. */
    double yAt(double atX) {
        for (int i = 1; i < size(); i++) {
            if (atX >= x.get(i - 1) && atX <= x.get(i)) {
                double dx = x.get(i) - x.get(i - 1);
                double share = dx == 0 ? 0 : (atX - x.get(i - 1)) / dx;
                if (share == 0 || share == 1) {
                    return y.get(share == 0 ? i - 1 : i); // its neighbour may be unknown
                }
                return y.get(i - 1) + share * (y.get(i) - y.get(i - 1));
            }
        }
        return Double.NaN;
    }
}
