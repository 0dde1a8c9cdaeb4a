package org.crosshead.platform.account;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.stream.Collectors;

/** What a password must be, and one-time passwords that can be read out without mistake. */
final class Passwords {

    static final int LENGTH_MIN = 12;

    /** What the hash takes in; anything beyond it would be ignored. */
    static final int BYTES_MAX = 72;

    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int GROUPS = 4;
    private static final int GROUP_LENGTH = 4;

    private Passwords() {}

    static boolean fits(String password) {
        return password.getBytes(StandardCharsets.UTF_8).length <= BYTES_MAX;
    }

    static boolean isLongEnough(String password) {
        return password.codePointCount(0, password.length()) >= LENGTH_MIN;
    }

    /** Returns four groups of four letters and digits, without those that look alike: 79 bits of chance. */
    static String oneTime() {
        SecureRandom random = new SecureRandom();
        return random.ints(GROUPS, 0, Integer.MAX_VALUE)
                .mapToObj(group -> random.ints(GROUP_LENGTH, 0, LETTERS.length())
                        .mapToObj(index -> String.valueOf(LETTERS.charAt(index)))
                        .collect(Collectors.joining()))
                .collect(Collectors.joining("-"));
    }
}
