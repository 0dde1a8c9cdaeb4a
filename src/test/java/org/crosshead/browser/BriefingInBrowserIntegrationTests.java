package org.crosshead.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;

/** From log-in to the signed briefing, as an inspector and a driver see it. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:browser;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BriefingInBrowserIntegrationTests {

    private static final Dimension TABLET = new Dimension(768, 1024);
    private static final Dimension PHONE = new Dimension(390, 844);
    private static final Dimension DESK = new Dimension(1280, 800);
    private static final List<Dimension> SIZES = List.of(TABLET, PHONE, DESK, new Dimension(320, 640));

    @LocalServerPort
    private int port;

    private ChromeDriver chrome;

    BriefingInBrowserIntegrationTests() {
        chrome = Browser.start();
    }

    @BeforeAll
    void waitPatiently() {
        chrome.manage().timeouts().implicitlyWait(Duration.ofSeconds(5)).pageLoadTimeout(Duration.ofSeconds(60));
    }

    @BeforeEach
    void asTablet() {
        chrome.manage().window().setSize(TABLET);
    }

    @AfterAll
    void quit() {
        chrome.quit();
    }

    private void open(String path) {
        chrome.get("http://127.0.0.1:" + port + path);
    }

    private void logIn(String name) {
        chrome.manage().deleteAllCookies();
        open("/login");
        chrome.findElement(By.id("username")).sendKeys(name);
        chrome.findElement(By.id("password")).sendKeys("demonstration");
        press("main form button");
    }

    /** Presses a button and waits for the page after: the mark on this one goes with it. */
    private void press(String css) {
        chrome.executeScript("window.pressedHere = true");
        chrome.findElement(By.cssSelector(css)).sendKeys(org.openqa.selenium.Keys.ENTER);
        new WebDriverWait(chrome, Duration.ofSeconds(60))
                .ignoring(WebDriverException.class)
                .until(driver -> Boolean.TRUE.equals(
                        chrome.executeScript("return !window.pressedHere && document.readyState === 'complete'")));
    }

    private String prepareFirstTrain() {
        logIn("inspector");
        open("/briefings?train=1");
        press("main form button.main");
        assertThat(chrome.getCurrentUrl()).contains("/briefings/");
        return String.valueOf(chrome.getCurrentUrl()).replaceFirst(".*(/briefings/\\d+).*", "$1");
    }

    @Test
    void briefingIsReadableAtEverySizeAndPassesTheAccessibilityRules() throws IOException {
        String path = prepareFirstTrain();
        for (Dimension size : SIZES) {
            chrome.manage().window().setSize(size);
            open(path);
            Number wide = (Number) chrome.executeScript("return document.documentElement.scrollWidth");
            Number window = (Number) chrome.executeScript("return window.innerWidth");
            assertThat(wide.intValue()).as("width at %s", size).isLessThanOrEqualTo(window.intValue() + 1);
        }
        chrome.manage().window().setSize(TABLET);
        open(path);
        picture();
        List<Rule> violations = new AxeBuilder()
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa"))
                .analyze(chrome)
                .getViolations();
        assertThat(violations).extracting(Rule::getId).isEmpty();
    }

    private void picture() throws IOException {
        String folder = System.getProperty("crosshead.pictures", "target");
        Files.createDirectories(Path.of(folder));
        Files.write(Path.of(folder, "briefing.png"), chrome.getScreenshotAs(OutputType.BYTES));
    }

    @Test
    void nextThingsStandOnTheFirstScreenOfATabletAndFollowThePlaceChosen() {
        open(prepareFirstTrain());
        WebElement here = chrome.findElement(By.id("from-here"));
        int bottom = here.getRect().getY() + here.getRect().getHeight();
        assertThat(bottom).isLessThanOrEqualTo(1_024);
        String before = chrome.findElement(By.id("next-braking")).getText();
        Select places = new Select(chrome.findElement(By.id("from")));
        places.selectByIndex(places.getOptions().size() / 2);
        assertThat(chrome.findElement(By.id("next-braking")).getText()).isNotEqualTo(before);
    }

    @Test
    void tapOnThePhonesStripTellsWhatComesNextFromThere() {
        chrome.manage().window().setSize(PHONE);
        open(prepareFirstTrain());
        String before = chrome.findElement(By.id("next-braking")).getText();
        List<WebElement> drawings = chrome.findElements(By.cssSelector("figure.strip .narrow svg"));
        WebElement half = drawings.get(drawings.size() / 2);
        chrome.executeScript("arguments[0].scrollIntoView({block: 'center'})", half);
        new Actions(chrome).moveToElement(half).click().perform();
        assertThat(chrome.findElement(By.id("next-braking")).getText()).isNotEqualTo(before);
    }

    @Test
    void everyNumberOpensItsSteps() {
        open(prepareFirstTrain());
        WebElement number = chrome.findElement(By.cssSelector("td.speed a.figure"));
        String target = String.valueOf(number.getAttribute("href")).replaceFirst(".*#", "");
        number.sendKeys(org.openqa.selenium.Keys.ENTER);
        assertThat(chrome.findElement(By.id(target)).isDisplayed()).isTrue();
        assertThat(chrome.findElement(By.id(target)).getText()).contains("=");
    }

    @Test
    void isKeptOnTheDeviceAtTheFirstVisit() {
        String path = prepareFirstTrain();
        open(path);
        new WebDriverWait(chrome, Duration.ofSeconds(20))
                .until(driver -> Boolean.TRUE.equals(chrome.executeAsyncScript(
                        "const done = arguments[arguments.length - 1]; caches.match(arguments[0]).then(found => done(!!found));",
                        path)));
        Object kept = chrome.executeAsyncScript(
                "const done = arguments[arguments.length - 1];"
                        + "caches.match(arguments[0]).then(found => found.text()).then(done);",
                path);
        assertThat(String.valueOf(kept)).contains("id=\"from-here\"");
    }

    @Test
    void issueIsSignedByTheDriverAndTheInspectorSeesIt() {
        String path = prepareFirstTrain();
        open(path + "/standing");
        press("main form button.main");
        logIn("driver");
        open(path + "/standing");
        press("#acknowledge button");
        assertThat(chrome.findElement(By.tagName("main")).getText()).contains("You signed for it");
        logIn("inspector");
        open(path + "/standing");
        assertThat(chrome.findElement(By.tagName("main")).getText()).contains("not yet");
    }

    @Test
    void inspectorMovesAPointOfThePlanAndTheBriefingSaysSo() {
        String briefing = prepareFirstTrain();
        open(briefing + "/by-hand");
        Select to = new Select(chrome.findElement(By.id("to")));
        to.selectByIndex(5);
        chrome.findElement(By.id("reason-plan")).sendKeys("Better seen from the cab");
        press("form:has(#reason-plan) button");
        String page = chrome.findElement(By.tagName("main")).getText();
        assertThat(page).containsAnyOf("It is kept", "It does not count");
        assertThat(page).doesNotContain("??");
    }

    @Test
    void inspectorsNoteStandsInTheBriefingWithItsReason() {
        String briefing = prepareFirstTrain();
        open(briefing + "/by-hand");
        new Select(chrome.findElement(By.id("at-note"))).selectByIndex(5);
        chrome.findElement(By.id("note")).sendKeys("Sound the whistle for the crossing keeper");
        chrome.findElement(By.id("reason-note")).sendKeys("The keeper is new");
        press("form:has(#note) button");
        String changed = String.valueOf(chrome.getCurrentUrl());
        assertThat(changed).endsWith("/by-hand");
        open(changed.replaceFirst(".*(/briefings/\\d+)/by-hand", "$1"));
        assertThat(chrome.findElement(By.tagName("main")).getText())
                .contains("Sound the whistle for the crossing keeper", "The keeper is new");
    }

    @Test
    void newcomerMakesATrainFromTheReadyFilledForm() {
        logIn("inspector");
        open("/trains/new");
        press("main form button.main");
        assertThat(chrome.getCurrentUrl()).contains("/trains/").doesNotContain("/new");
        String id = String.valueOf(chrome.getCurrentUrl()).replaceFirst(".*/trains/(\\d+).*", "$1");
        open("/briefings?train=" + id);
        press("main form button.main");
        assertThat(chrome.findElement(By.cssSelector("ol.today")).getText()).isNotEmpty();
    }

    @Test
    void everydayPagesPassTheAccessibilityRules() {
        String briefing = prepareFirstTrain();
        for (String path : List.of(
                "/",
                "/trains",
                "/trains/1",
                "/trains/new",
                "/routes/MAIN",
                "/classes",
                "/sections",
                "/knowledge",
                "/knowledge/D-03",
                "/permits/3",
                "/cover",
                "/refresh",
                "/learning",
                "/class-guides",
                "/knowledge-policy",
                "/policy-figures",
                "/people/D-03",
                "/formations",
                briefing + "/cab",
                briefing + "/by-hand",
                briefing + "/what-if",
                briefing + "/what-if?load=120&rail=WET&late=5&pressure=90&coal=90")) {
            open(path);
            List<Rule> violations = new AxeBuilder()
                    .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa"))
                    .analyze(chrome)
                    .getViolations();
            assertThat(violations).as(path).extracting(Rule::getId).isEmpty();
        }
    }
}
