package org.crosshead.kernel.motion;

/** Says what is done with regulator and cutoff. Holds no state of its own: what it did before stands in the moment. */
@FunctionalInterface
public interface Driver {

    /**
     * Returns the handles from this moment on. Limits and stops are not its business: while the train is braked for one, steam
     * is shut whatever it says, and pull above what holds the speed allowed is eased.
     */
    Handles handles(Moment moment);
}
