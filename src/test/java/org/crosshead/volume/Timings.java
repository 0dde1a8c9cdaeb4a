package org.crosshead.volume;

import java.util.Arrays;
import java.util.Locale;

/** Times of work, in words for a report. */
final class Timings {

    private Timings() {}

    static String seconds(String what, long beginNs) {
        return String.format(Locale.ROOT, "%s: %.1f s", what, (System.nanoTime() - beginNs) / 1e9);
    }

    /** Does the work twice as often as it is counted; the second half counts. */
    static String median(String what, int times, Runnable work) {
        double[] milliseconds = new double[times];
        for (int i = 0; i < 2 * times; i++) {
            long begin = System.nanoTime();
            work.run();
            milliseconds[i % times] = (System.nanoTime() - begin) / 1e6;
        }
        Arrays.sort(milliseconds);
        return String.format(
                Locale.ROOT,
                "%s: median %.1f ms, worst of %d %.1f ms",
                what,
                milliseconds[times / 2],
                times,
                milliseconds[times - 1]);
    }
}
