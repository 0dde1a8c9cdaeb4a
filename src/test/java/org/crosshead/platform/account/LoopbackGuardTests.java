package org.crosshead.platform.account;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoopbackGuardTests {

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "::1"})
    void letsADemonstrationStartOnThisMachine(String address) throws UnknownHostException {
        InetAddress loopback = InetAddress.getByName(address);

        assertThatCode(() -> new LoopbackGuard(loopback)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "192.0.2.1"})
    void refusesADemonstrationThatOthersCanReach(String address) throws UnknownHostException {
        InetAddress reachable = InetAddress.getByName(address);

        assertThatThrownBy(() -> new LoopbackGuard(reachable))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("server.address");
    }

    @Test
    void refusesADemonstrationOnEveryAddress() {
        assertThatThrownBy(() -> new LoopbackGuard(null)).isInstanceOf(IllegalStateException.class);
    }
}
