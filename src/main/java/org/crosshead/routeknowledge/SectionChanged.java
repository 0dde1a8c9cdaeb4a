package org.crosshead.routeknowledge;

/** A section of a route was entered, changed, approved, closed or opened. */
public record SectionChanged(String code, String routeCode) {}
