package org.crosshead.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Finds and starts a Chromium. Where none is, tests are skipped loudly; with CROSSHEAD_REQUIRE_BROWSER=true they fail. */
final class Browser {

    private static final Logger LOG = LoggerFactory.getLogger(Browser.class);
    private static final List<String> CHROMIUM =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
    private static final List<String> DRIVER = List.of(
            "/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver", "/usr/lib/chromium-browser/chromedriver");

    private Browser() {}

    static ChromeDriver start() {
        Optional<Path> chromium = found(CHROMIUM);
        Optional<Path> driver = found(DRIVER);
        if (chromium.isEmpty() || driver.isEmpty()) {
            LOG.error("NO BROWSER: no Chromium with its driver was found, so NO PAGE WAS TESTED IN A BROWSER");
            assertThat(System.getenv("CROSSHEAD_REQUIRE_BROWSER"))
                    .as("a Chromium is required here")
                    .isNotEqualTo("true");
        }
        assumeTrue(chromium.isPresent() && driver.isPresent(), "no Chromium found");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.orElseThrow().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--disable-dev-shm-usage",
                "--lang=en-GB");
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.orElseThrow().toFile())
                .usingAnyFreePort()
                .build();
        return new ChromeDriver(service, options);
    }

    private static Optional<Path> found(List<String> places) {
        return places.stream().map(Path::of).filter(Files::isExecutable).findFirst();
    }
}
