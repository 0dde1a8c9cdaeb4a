package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.HandPointDraft;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.motion.Assistance;
import org.crosshead.kernel.motion.Cause;
import org.crosshead.kernel.motion.Change;
import org.crosshead.kernel.motion.EngineAtWork;
import org.crosshead.kernel.motion.Run;

/** The points that the road and the people who made the plan add to those of the crew: help, speeds to be held, notes. */
final class RoadPoints {

    private static final double PACE_NEAR_MPS = 0.3;
    private static final double SAME_PACE_MPS = 0.5;

    private final Workings workings;
    private final Run run;

    RoadPoints(Workings workings) {
        this.workings = workings;
        this.run = workings.run();
    }

    List<Told.Point> points() {
        List<Told.Point> points = new ArrayList<>();
        for (int held : HeldStretches.beginnings(run)) {
            points.add(new Told.Point(
                    held, new Told("brake-hold", false, null, Phrase.of("action.brake-hold"), Cause.FALL_BEGINS)));
        }
        points.addAll(assistance());
        points.addAll(paces());
        points.addAll(notes());
        return points;
    }

    /** Where assisting engines begin and end their work. */
    private List<Told.Point> assistance() {
        List<Told.Point> points = new ArrayList<>();
        List<EngineAtWork> engines = workings.model().request().train().engines();
        for (int i = 1; i < engines.size(); i++) {
            Assistance range = engines.get(i).assistance();
            if (range.equals(Assistance.THROUGHOUT) || range.fromM() >= run.endM()) {
                continue;
            }
            Term number = Term.text(workings.inputs().engines().get(i).turn().engineNumber());
            Term end = workings.place(Math.min(range.toM(), run.endM()));
            points.add(new Told.Point(
                    run.sampleAt(Math.max(range.fromM(), run.startM())),
                    new Told(
                            "assist-begin",
                            false,
                            null,
                            Phrase.of("action.assist-begin", number, end),
                            Cause.ASSISTED)));
            if (range.toM() <= run.endM()) {
                points.add(new Told.Point(
                        run.sampleAt(range.toM()),
                        new Told("assist-end", false, null, Phrase.of("action.assist-end", number), Cause.ASSISTED)));
            }
        }
        return points;
    }

    /** What an inspector wants told at a place. */
    private List<Told.Point> notes() {
        List<Told.Point> points = new ArrayList<>();
        for (HandWork.Worked worked : workings.byHand()) {
            HandPointDraft draft = worked.point().draft();
            if (draft.kind() == HandPointDraft.Kind.NOTE && worked.applied() && worked.atM() <= run.endM()) {
                points.add(new Told.Point(
                        run.sampleAt(worked.atM()),
                        new Told(
                                "note",
                                false,
                                null,
                                Phrase.of("action.note", Term.text(draft.note())),
                                Cause.SET_BY_HAND)));
            }
        }
        return points;
    }

    /** Speeds to be held, told where each is reached. */
    private List<Told.Point> paces() {
        List<Told.Point> points = new ArrayList<>();
        double toldMps = Double.NEGATIVE_INFINITY;
        for (Change change : run.changes()) {
            if (change instanceof Change.PaceKept kept
                    && Math.abs(kept.speedMps() - toldMps) > SAME_PACE_MPS
                    && isHeld(kept)) {
                toldMps = kept.speedMps();
                points.add(new Told.Point(
                        reached(kept),
                        new Told(
                                "hold-speed",
                                false,
                                null,
                                Phrase.of("action.hold-speed", pace(kept)),
                                Cause.SPEED_REACHED)));
            }
        }
        return points;
    }

    private int reached(Change.PaceKept kept) {
        int at = Math.min(kept.sample(), run.size() - 1);
        while (at < run.size() - 1 && run.speedMps(at) < kept.speedMps() - PACE_NEAR_MPS) {
            at++;
        }
        return at;
    }

    /** Returns whether the train comes to a speed under steam before its next stop. */
    private boolean isHeld(Change.PaceKept kept) {
        int at = reached(kept);
        for (int i = Math.min(kept.sample(), run.size() - 1) + 1; i <= at; i++) {
            if (run.speedMps(i) <= 0) {
                return false;
            }
        }
        return run.speedMps(at) >= kept.speedMps() - PACE_NEAR_MPS && run.regulator(at) > 0;
    }

    /** Returns the speed to be held, as it is told where it is taken up. */
    private Term pace(Change.PaceKept kept) {
        double atM = run.positionM(Math.min(kept.sample(), run.size() - 1));
        return Term.number(
                workings.speeds().value(kept.speedMps(), atM), workings.speeds().unit(atM));
    }
}
