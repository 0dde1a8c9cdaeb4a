package org.crosshead.crew;

/** What a person is appointed to do. */
public enum Post {
    DRIVER,
    FIREMAN,
    INSPECTOR,
    MANAGER,
    ASSESSOR,
    ADMINISTRATOR
}
