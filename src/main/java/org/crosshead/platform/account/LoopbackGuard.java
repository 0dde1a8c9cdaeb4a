package org.crosshead.platform.account;

import java.net.InetAddress;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Refuses to start a demonstration, whose passwords everybody knows, on an address that other machines can reach. */
@Component
@Profile("demo")
class LoopbackGuard {

    LoopbackGuard(@Value("${server.address:#{null}}") @Nullable InetAddress address) {
        if (address == null || !address.isLoopbackAddress()) {
            throw new IllegalStateException("The demonstration listens on this machine only: set server.address to"
                    + " 127.0.0.1, or start without the profile demo. It was " + address);
        }
    }
}
