package org.crosshead.kernel.motion;

import java.util.List;
import org.crosshead.kernel.track.Track;
import org.crosshead.kernel.traction.RailState;

/**
 * What the train runs over.
 *
 * @param rail state of the rail outside the stretches
 * @param poorRail stretches in another state; where two overlap the later in the list counts
 */
public record RunRoad(Track track, RailState rail, List<RailStretch> poorRail) {

    public RunRoad {
        poorRail = List.copyOf(poorRail);
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
