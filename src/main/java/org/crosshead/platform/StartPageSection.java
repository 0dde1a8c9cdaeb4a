package org.crosshead.platform;

import java.util.List;
import org.crosshead.platform.CurrentActor.Actor;

/** A block of the start page; every capability may contribute some, in the order of {@code @Order}. */
public interface StartPageSection {

    /** Code of the heading. */
    String titleCode();

    /** Code of the sentence shown when there are no links; the block is left out if the actor should not see it. */
    String emptyCode();

    /** Says whether this block is for this person. */
    boolean isFor(Actor actor);

    List<Link> links(Actor actor);

    /**
     * One line of the block.
     *
     * @param path where it leads, within this service
     * @param text what it is, as the person should read it
     * @param detail said in small type beside it, may be empty
     */
    record Link(String path, String text, String detail) {}
}
