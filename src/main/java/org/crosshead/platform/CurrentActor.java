package org.crosshead.platform;

/** Who is acting in the present request or job. */
@FunctionalInterface
public interface CurrentActor {

    Actor get();

    /** A person logged in, or a job of the service itself. */
    record Actor(String name) {}
}
