package org.crosshead.routeknowledge;

/**
 * Something that a driver sees, hears or smells on a section, and what it tells them.
 *
 * @param featureName the thing of the route that it points to
 * @param meaning what to do, and for what
 * @param missed what happens when it is missed
 */
public record Cue(String sectionCode, String featureName, Tells tells, String meaning, String missed) {

    /** What it tells. */
    public enum Tells {
        SHUT_OFF,
        BRAKE,
        LOOK_FOR_SIGNAL,
        OPEN_UP,
        NOTCH_UP,
        WHISTLE,
        FIRE_OR_FEED
    }
}
