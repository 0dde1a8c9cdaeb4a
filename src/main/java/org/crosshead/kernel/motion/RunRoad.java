package org.crosshead.kernel.motion;

import java.util.List;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.RailState;

/**
 * What the train runs over.
 *
 * @param rail state of the rail outside the stretches
 * @param poorRail stretches in another state; where two overlap the later in the list counts
 * @param reversalsM where the train stops and goes back over the rails it came by, in running order. The track is laid out in
 *     the order of running, so that beyond a reversal it repeats, turned round, what lies before it. What was the tail is the head
 *     then: it lies one train length beyond the reversal without having moved.
 * @param marksM places where a crew may change something: a step ends at each
 */
public record RunRoad(
        Track track, RailState rail, List<RailStretch> poorRail, List<Double> reversalsM, List<Double> marksM) {

    public RunRoad {
        poorRail = List.copyOf(poorRail);
        reversalsM = List.copyOf(reversalsM);
        marksM = List.copyOf(marksM);
    }

    public RunRoad(Track track, RailState rail, List<RailStretch> poorRail, List<Double> reversalsM) {
        this(track, rail, poorRail, reversalsM, List.of());
    }

    public RunRoad(Track track, RailState rail, List<RailStretch> poorRail) {
        this(track, rail, poorRail, List.of());
    }

    /** Returns the same road with marks. */
    public RunRoad marked(List<Double> places) {
        return new RunRoad(track, rail, poorRail, reversalsM, places);
    }

    /** Returns the state of the rail under the head of the train. */
    public RailState railAt(double positionM) {
        RailState found = rail;
        for (RailStretch stretch : poorRail) {
            if (positionM >= stretch.fromM() && positionM < stretch.toM()) {
                found = stretch.state();
            }
        }
        return found;
    }
}
