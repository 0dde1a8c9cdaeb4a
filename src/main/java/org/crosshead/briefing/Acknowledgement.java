package org.crosshead.briefing;

import java.time.Instant;

/**
 * One of the crew has read an issue.
 *
 * @param deviceTime by the clock of the device on which it was read
 * @param receivedAt when it reached the service
 */
public record Acknowledgement(String staffNumber, String personName, Instant deviceTime, Instant receivedAt) {}
