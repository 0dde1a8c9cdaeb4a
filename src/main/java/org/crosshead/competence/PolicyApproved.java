package org.crosshead.competence;

import java.time.LocalDate;

/** A version of the policy on what people know was approved. */
public record PolicyApproved(int version, LocalDate validFrom) {}
