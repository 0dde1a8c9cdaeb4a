package org.crosshead.kernel.plan;

/**
 * What is won and lost by shutting steam at a place rather than going on as before until the brake.
 *
 * @param lostS time
 * @param savedKg coal
 */
public record ShutWorth(double lostS, double savedKg) {}
