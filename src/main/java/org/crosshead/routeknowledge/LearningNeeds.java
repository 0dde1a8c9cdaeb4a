package org.crosshead.routeknowledge;

/**
 * What a learner needs at least before they may say that they are ready. Whether they know it is for the assessor: the count alone never
 * says so.
 *
 * @param trips in all, 0 to {@value #MOST}
 * @param dark of these in the dark
 * @param driven of these at the controls
 * @param badWeather of these in fog, rain, snow or at leaf fall
 * @param refresher trips of somebody who held it and whose knowledge lapsed not long ago
 */
public record LearningNeeds(int trips, int dark, int driven, int badWeather, int refresher) {

    public static final int MOST = 100;

    /** Nothing laid down. */
    public static final LearningNeeds NONE = new LearningNeeds(0, 0, 0, 0, 0);

    /** Says whether these can be. */
    public boolean make() {
        return trips >= 0
                && trips <= MOST
                && refresher >= 0
                && refresher <= MOST
                && within(dark)
                && within(driven)
                && within(badWeather);
    }

    private boolean within(int count) {
        return count >= 0 && count <= trips;
    }

    /** Returns what of each is needed by whoever learns one or the other: the greater. */
    public LearningNeeds or(LearningNeeds other) {
        return new LearningNeeds(
                Math.max(trips, other.trips),
                Math.max(dark, other.dark),
                Math.max(driven, other.driven),
                Math.max(badWeather, other.badWeather),
                Math.max(refresher, other.refresher));
    }
}
