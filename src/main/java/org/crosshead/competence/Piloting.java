package org.crosshead.competence;

/** Who may go along over a road with a driver who does not hold it. */
enum Piloting {
    /** Another driver who holds it and has what a driver must have: Directive 2007/59/EC Article 4(2), from memory. */
    BY_A_DRIVER,
    /**
     * Somebody who is none of the assigned crew: a driver, but with whom has held it before anybody who holds it. 49 CFR 240.231(b), from
     * memory.
     */
    NOT_OF_THE_CREW
}
