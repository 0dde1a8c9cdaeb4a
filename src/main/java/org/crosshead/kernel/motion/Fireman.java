package org.crosshead.kernel.motion;

/** Says what is fired and fed. Holds no state of its own. */
@FunctionalInterface
public interface Fireman {

    /** Returns the work on one engine from this moment on. */
    Stoking stoking(Moment moment, int engine);
}
