package org.crosshead.platform.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands around a page.
 *
 * @param actorName whose log-in it is, or null before the log-in
 * @param links pages that this person may open
 */
public record PageFrame(boolean demonstration, @Nullable String actorName, List<NavigationLink> links) {

    /**
     * A link of the navigation.
     *
     * @param code of its words
     * @param here true on the pages to which it leads
     */
    public record NavigationLink(String path, String code, boolean here) {}
}
