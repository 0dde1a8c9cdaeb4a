package org.crosshead.platform.account;

/** A person for whom a log-in may be made. */
public record PersonWithoutLogIn(long id, String staffNumber, String name) {}
