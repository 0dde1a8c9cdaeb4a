package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.document.BrakingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.kernel.braking.Release;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.motion.Run;

/** Warns where a braking point comes so soon after another that the two are one application, or the brake has not recovered. */
final class BrakingNeighbours {

    private static final double TOGETHER_M = 200;
    private static final double PER_CENT = 100;

    private final Workings workings;

    BrakingNeighbours(Workings workings) {
        this.workings = workings;
    }

    List<Phrase> warnings(BrakingRow before, double brakeAtM, String key) {
        List<Phrase> warnings = new ArrayList<>();
        double targetM = before.targetPlace().positionM();
        if (!before.target().equals("stop")) {
            double offS = timeS(targetM);
            double onS = timeS(brakeAtM);
            double recoverS = Release.recoverS(workings.model().brake());
            if (onS > offS && onS - offS < recoverS) {
                warnings.add(Phrase.of(
                        "braking.warning.not-recovered",
                        workings.book().put(key + "between", seconds("braking.between", offS, onS)),
                        workings.book().given(key + "recover", recoverS, "sec", "own:release"),
                        workings.book().put(key + "left", left(onS - offS, recoverS))));
            }
        }
        return warnings;
    }

    /**
     * Returns the share of its force that the brake has at a place: all of it, unless it was let go for the point before so lately that it
     * has not recovered.
     */
    double share(BrakingRow before, double brakeAtM) {
        if (before.target().equals("stop")) {
            return 1;
        }
        double afterS = timeS(brakeAtM) - timeS(before.targetPlace().positionM());
        return Release.share(workings.model().brake(), Math.max(0, afterS));
    }

    /** Returns whether a place falls together with the point before, so that the brake is not let go between them. */
    boolean isTogether(BrakingRow before, double brakeAtM) {
        return brakeAtM <= before.targetPlace().positionM()
                || Math.abs(brakeAtM - before.brakeAt().positionM()) < TOGETHER_M;
    }

    private static Figure seconds(String name, double offS, double onS) {
        return Figure.of(List.of(new Step(
                StepKind.FORMULA,
                name,
                "on - off",
                List.of(new Input("on", onS, "s", "run:time"), new Input("off", offS, "s", "run:time")),
                onS - offS,
                "sec",
                "ARITHMETIC")));
    }

    private Figure left(double afterS, double recoverS) {
        double percent = PER_CENT * Release.share(workings.model().brake(), afterS);
        return Figure.of(List.of(new Step(
                StepKind.FORMULA,
                "braking.recovered",
                "100 * min(1, after / recover)",
                List.of(
                        new Input("after", afterS, "s", "run:time"),
                        new Input("recover", recoverS, "s", "own:release")),
                percent,
                "%",
                "ARITHMETIC")));
    }

    /** When the forecast passes a place, straight between its samples. */
    private double timeS(double atM) {
        Run run = workings.run();
        int low = 0;
        while (low + 1 < run.size() && run.positionM(low + 1) < atM) {
            low++;
        }
        int high = Math.min(low + 1, run.size() - 1);
        double lengthM = run.positionM(high) - run.positionM(low);
        double along = lengthM > 0 ? Math.min(1, Math.max(0, (atM - run.positionM(low)) / lengthM)) : 0;
        return run.timeS(low) + along * (run.timeS(high) - run.timeS(low));
    }
}
