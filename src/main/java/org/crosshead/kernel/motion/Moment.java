package org.crosshead.kernel.motion;

import org.crosshead.kernel.traction.Controls;
import org.crosshead.kernel.traction.Engine;
import org.crosshead.kernel.traction.EngineState;
import org.crosshead.kernel.traction.Pull;
import org.crosshead.kernel.traction.RailState;

/** A crew's view of one moment of a run: gauges, handles, and what they know of the road ahead. */
public interface Moment {

    double positionM();

    double timeS();

    double speedMps();

    /** Returns true while the train stands at a call. */
    boolean standing();

    /** Returns true while the brake is applied or about to be, for a limit or a stop. */
    boolean braking();

    /** Returns what the driver has set; before the first setting regulator and cutoff are 0. */
    Handles handles();

    /** Returns the task of a fireman last set. */
    Stoking.Task task(int engine);

    /** Returns the time since the driver last moved a handle. */
    double sinceChangeS();

    /** Returns how far the train has run since it last stood. */
    double sinceStandingM();

    /** Returns the time since the fireman of this engine changed his task. */
    double sinceTaskS(int engine);

    Engine engine(int engine);

    EngineState state(int engine);

    double tankWaterKg(int engine);

    RailState rail();

    /** Returns the greatest speed allowed or wanted here: limits, brakes for what lies ahead, and booked time. */
    double speedWantedMps();

    /** Returns the least of the greatest speeds allowed or wanted over the next stretch. */
    double speedWantedMps(double aheadM);

    /** Returns true if the next thing to be braked for is a stop. */
    boolean stopAhead();

    /** Returns how long before braking steam may be shut off. */
    double coastS();

    /** Returns the pull at the rim of one engine with these handles at this speed. */
    Pull pull(int engine, Controls controls, double speedMps);

    /** Returns the pull at the rim that all engines at work would give with these handles at the present speed. */
    double pullN(Controls controls);

    /** Returns the steam that this engine's cylinders now use. */
    double steamKgPerS(int engine);

    /** Returns the mean of resistance, gravity and curves at this speed over the next stretch; negative where the train runs away; at rest with starting resistance. */
    double holdingForceN(double speedMps, double aheadM);

    /** Returns the mass, turning wheels included. */
    double inertiaKg();

    /** Returns the mean gradient under the train over a stretch that begins {@code fromM} ahead and is {@code lengthM} long. */
    double gradient(double fromM, double lengthM);
}
