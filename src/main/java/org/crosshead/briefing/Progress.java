package org.crosshead.briefing;

/** Hears how far the making of a briefing has come. */
@FunctionalInterface
public interface Progress {

    /** Nobody waits. */
    Progress UNHEARD = part -> {};

    /** What a briefing is made of, in the order in which it is made. */
    enum Part {
        /** Waits until another briefing is made. */
        WAITS,
        /** Reads the train, its road, engines and vehicles. */
        READS,
        /** Finds the plan. */
        PLANS,
        /** Runs it on days that differ. */
        DAYS,
        /** Braking points, standing, the fireman's half, and storing it all. */
        WRITES
    }

    /** Hears that a part begins. */
    void begins(Part part);
}
