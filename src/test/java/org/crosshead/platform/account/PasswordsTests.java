package org.crosshead.platform.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PasswordsTests {

    @Test
    void makesOneTimePasswordsOfFourReadableGroups() {
        assertThat(Stream.generate(Passwords::oneTime).limit(200))
                .doesNotHaveDuplicates()
                .allMatch(password -> password.matches("[a-hjkmnp-z2-9]{4}(-[a-hjkmnp-z2-9]{4}){3}"));
    }

    @Test
    void countsCharactersForTheLeastAndBytesForTheMost() {
        assertThat(Passwords.isLongEnough("eleven char")).isFalse();
        assertThat(Passwords.isLongEnough("twelve chars")).isTrue();
        assertThat(Passwords.fits("x".repeat(72))).isTrue();
        assertThat(Passwords.fits("\u00e9".repeat(37)))
                .as("74 bytes in 37 letters")
                .isFalse();
    }
}
