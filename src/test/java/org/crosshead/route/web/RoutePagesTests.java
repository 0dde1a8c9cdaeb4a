package org.crosshead.route.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.willThrow;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.platform.CurrentActor;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Restriction;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RevisionNote;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.RouteFixtures;
import org.crosshead.route.RouteRefusals;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.route.Scope;
import org.crosshead.route.SpeedUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;

/** The pages of routes and restrictions as a browser gets them. */
@WebMvcTest({RouteController.class, RouteFormController.class, RestrictionController.class, JunctionController.class})
@Import({RouteWords.class, RoutePageWriter.class, LongSectionDiagram.class, RestrictionPages.class})
@WithMockUser(roles = "INSPECTOR")
class RoutePagesTests {

    private static final RouteRevision MAIN =
            new RouteRevision(4, 1, 3, RouteFixtures.MONDAY, "Anna", "surveyed anew", RouteFixtures.mainLine());

    @Autowired
    private MockMvcTester mvc;

    @MockitoBean
    private Routes routes;

    @MockitoBean
    private Restrictions restrictions;

    @BeforeEach
    void store() {
        given(routes.current("MAIN")).willReturn(Optional.of(MAIN));
        given(routes.revision("MAIN", 3)).willReturn(Optional.of(MAIN));
        given(routes.all())
                .willReturn(List.of(
                        new RouteSummary("KILO", "Invented kilometre line", 5, 1, 5, MeasureUnit.KILOMETRES),
                        new RouteSummary("MAIN", "Invented main line", 4, 3, 800, MeasureUnit.CHAINS)));
        given(routes.history("MAIN"))
                .willReturn(List.of(new RevisionNote(4, 3, RouteFixtures.MONDAY, "Anna", "surveyed anew")));
        given(routes.junctions()).willReturn(List.of(new JunctionDraft("Gabel", "KILO", 0, "MAIN", 480)));
        given(restrictions.all())
                .willReturn(List.of(new Restriction(
                        7, RouteFixtures.restriction("MAIN", 500, 520, 15), RouteFixtures.MONDAY, "Anna", null)));
    }

    @Test
    void listsRoutesWithTheirLength() {
        assertThat(mvc.get().uri("/routes"))
                .hasStatusOk()
                .bodyText()
                .contains("href=\"/routes/MAIN\"", "10 miles", "5 km", "href=\"/routes/new\"");
    }

    @Test
    void showsARouteWithDiagramWordsAndTables() {
        assertThat(mvc.get().uri("/routes/MAIN"))
                .hasStatusOk()
                .bodyText()
                .contains(
                        "<svg",
                        "Gradients of Invented main line from 0m 0ch to 5m 0ch",
                        "Down, from 0m 0ch: Anfang: rises 1 in 100 for 4 miles to 4m 0ch; level for 2 miles to 6m 0ch;"
                                + " Mitte: falls 1 in 200 for 4 miles to 10m 0ch. It ends 106 ft higher than it begins.",
                        "<td data-label=\"Limit\"><span>45 mph</span></td>",
                        "both directions, unfitted goods trains",
                        "both directions, tender or bunker first",
                        "<span class=\"estimate\">estimated</span>",
                        "3m 60ch to 4m 10ch",
                        "length 600 ft; seen from 300 ft",
                        "/routes/MAIN/revisions/3",
                        "Revision 3, 6 May 2030 08:00, by Anna: surveyed anew",
                        "T 12",
                        "Gabel");
    }

    @Test
    void showsAScriptInARemarkAsText() {
        assertThat(mvc.get().uri("/routes/MAIN"))
                .bodyText()
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script", " style=", "onclick");
    }

    @Test
    @WithMockUser(roles = "DRIVER")
    void offersNoChangeToWhoMayOnlyRead() {
        assertThat(mvc.get().uri("/routes/MAIN"))
                .hasStatusOk()
                .bodyText()
                .doesNotContain("/edit", "/withdraw", "/restrictions/new");
        assertThat(mvc.get().uri("/routes/MAIN/edit")).hasStatus(403);
        assertThat(mvc.get().uri("/routes/new")).hasStatus(403);
        assertThat(mvc.get().uri("/restrictions/new")).hasStatus(403);
    }

    @Test
    void saysOfAnOldRevisionThatItIsOne() {
        given(routes.history("MAIN"))
                .willReturn(List.of(
                        new RevisionNote(9, 4, RouteFixtures.MONDAY, "Ben", "later"),
                        new RevisionNote(4, 3, RouteFixtures.MONDAY, "Anna", "surveyed anew")));

        assertThat(mvc.get().uri("/routes/MAIN/revisions/3"))
                .hasStatusOk()
                .bodyText()
                .contains("This is how the route was")
                .doesNotContain("/edit");
    }

    @Test
    void answersNotFoundForAnUnknownRouteOrRevision() {
        assertThat(mvc.get().uri("/routes/GHOST")).hasStatus(404);
        assertThat(mvc.get().uri("/routes/MAIN/revisions/77")).hasStatus(404);
        assertThat(mvc.get().uri("/routes/GHOST/edit")).hasStatus(404);
        assertThat(mvc.get().uri("/restrictions/77/withdraw")).hasStatus(404);
    }

    @Test
    void opensTheFormReadyFilled() {
        assertThat(mvc.get().uri("/routes/MAIN/edit"))
                .hasStatusOk()
                .bodyText()
                .contains(
                        "name=\"basedOn\" value=\"3\"",
                        "6m 0ch; 10m 0ch; fall 1 in 200; surveyed;",
                        "name=\"_csrf\"",
                        "3m 60ch; 4m 20ch; 40 mph; rising; all; any; published;");
    }

    @Test
    void storesWhatItShowedAsTheSameRoute() {
        MvcTestResult result = post("/routes/MAIN/edit", filled());

        assertThat(result).hasStatus(303).redirectedUrl().isEqualTo("/routes/MAIN");
        verify(routes).enter(RouteFixtures.mainLine(), "looked over", 3);
    }

    @Test
    void namesTheLineThatItCannotReadAndKeepsWhatWasTyped() {
        Map<String, String> typed = filled();
        typed.put("gradients", "0m 0ch; 4m 0ch; rise 1 in 100\r\n\r\n4m 0ch; 10m 0ch; steep");

        assertThat(post("/routes/MAIN/edit", typed))
                .hasStatus(422)
                .bodyText()
                .contains(
                        "Line 3: \u201csteep\u201d is no gradient.",
                        "id=\"gradients-problem\"",
                        "href=\"#gradients\"",
                        "4m 0ch; 10m 0ch; steep</textarea>",
                        "value=\"looked over\"");
        verify(routes, never()).enter(any(), anyString(), anyInt());
    }

    @Test
    void putsARefusalBesideTheLineOfItsEntry() {
        Map<String, String> typed = filled();
        typed.put("limits", "\n0m 0ch; 10m 0ch; 0 mph");
        willThrow(RouteRefusals.of("limits", 0, "limit", "route.refused.limit", 0.0, 150.0))
                .given(routes)
                .enter(any(), anyString(), anyInt());

        assertThat(post("/routes/MAIN/edit", typed))
                .hasStatus(422)
                .bodyText()
                .contains("Line 2: A limit must be more than 0 and at most 150; 0 is not.");
    }

    @Test
    void saysThatSomebodyElseWasFaster() {
        willThrow(RouteRefusals.changed("MAIN")).given(routes).enter(any(), anyString(), anyInt());

        assertThat(post("/routes/MAIN/edit", filled()))
                .hasStatus(422)
                .bodyText()
                .contains("Somebody has revised route MAIN");
        assertThat(post("/routes/new", filled())).hasStatus(422).bodyText().contains("There is a route MAIN already.");
    }

    @Test
    void refusesARequestWithoutToken() {
        assertThat(mvc.post().uri("/routes/MAIN/edit").param("reason", "x")).hasStatus(403);
    }

    @Test
    void listsRestrictionsAndStoresOneInTheRailwaysTime() {
        assertThat(mvc.get().uri("/restrictions"))
                .hasStatusOk()
                .bodyText()
                .contains("T 12", "15 mph", "6m 20ch to 6m 40ch", "in force", "/restrictions/7/withdraw");

        MvcTestResult result = post("/restrictions/new", restriction("2030-05-06T08:00"));

        assertThat(result).hasStatus(303).redirectedUrl().isEqualTo("/restrictions");
        verify(restrictions)
                .enter(new RestrictionDraft(
                        "T 12",
                        "MAIN",
                        500,
                        520,
                        15,
                        SpeedUnit.MPH,
                        Scope.BOTH,
                        Instant.parse("2030-05-06T08:00:00Z"),
                        Instant.parse("2030-05-07T08:00:00Z"),
                        "ballast wet"));
    }

    @Test
    void saysBesideTheFieldWhatIsWrongWithARestriction() {
        assertThat(post("/restrictions/new", restriction("yesterday")))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"firstMoment-problem\"", "is no day and time", "value=\"6m 20ch\"");
        verify(restrictions, never()).enter(any());
    }

    @Test
    void withdrawsWithAReason() {
        assertThat(mvc.get().uri("/restrictions/7/withdraw"))
                .hasStatusOk()
                .bodyText()
                .contains("Limit 15 mph on route MAIN, 6m 20ch to 6m 40ch");
        assertThat(post("/restrictions/7/withdraw", Map.of("reason", "tamped"))).hasStatus(303);
        verify(restrictions).withdraw(7, "tamped");
    }

    @Test
    void offersTheEstimatesOfARouteAndTakesTheirAcceptance() {
        RouteDraft waiting = RouteFixtures.waiting();
        given(routes.current("MAIN"))
                .willReturn(Optional.of(
                        new RouteRevision(4, 1, 3, RouteFixtures.MONDAY, "Anna", "surveyed anew", waiting)));

        assertThat(mvc.get().uri("/routes/MAIN"))
                .bodyText()
                .contains("one curve", "They wait to be accepted", "action=\"/routes/MAIN/estimates\"");
        assertThat(post("/routes/MAIN/estimates", Map.of("basedOn", "3")))
                .hasStatus3xxRedirection()
                .redirectedUrl()
                .isEqualTo("/routes/MAIN");
        verify(routes).acceptEstimates("MAIN", 3);
    }

    @Test
    @WithMockUser(roles = "DRIVER")
    void saysThatEstimatesAreAcceptedAndOffersReadersNothing() {
        assertThat(mvc.get().uri("/routes/MAIN"))
                .bodyText()
                .contains("They are accepted")
                .doesNotContain("/estimates\"");
    }

    @Test
    void joinsTwoRoutes() {
        assertThat(mvc.get().uri("/routes/MAIN/junctions/new")).hasStatusOk();
        assertThat(post(
                        "/routes/MAIN/junctions/new",
                        Map.of("name", "Gabel", "atMeasure", "6.00", "otherRouteCode", "KILO", "otherMeasure", "0")))
                .hasStatus(303);
        verify(routes).join(new JunctionDraft("Gabel", "MAIN", 480, "KILO", 0));
        assertThat(post("/routes/MAIN/junctions/new", Map.of("name", "Gabel", "otherRouteCode", "KILO")))
                .hasStatus(422)
                .bodyText()
                .contains("is no position in miles and chains", "is no position in kilometres");
    }

    private static Map<String, String> restriction(String firstMoment) {
        return Map.of(
                "number", "T 12",
                "routeCode", "MAIN",
                "fromMeasure", "6m 20ch",
                "toMeasure", "6m 40ch",
                "limit", "15",
                "limitUnit", "MPH",
                "scope", "BOTH",
                "firstMoment", firstMoment,
                "lastMoment", "2030-05-07T08:00",
                "reason", "ballast wet");
    }

    private static Map<String, String> filled() {
        RouteForm form = RouteForm.of(MAIN);
        Map<String, String> typed = new HashMap<>(Map.of("reason", "looked over"));
        for (String field : List.of(
                "code",
                "name",
                "measureUnit",
                "risingName",
                "fallingName",
                "fromMeasure",
                "toMeasure",
                "lines",
                "estimatesAccepted",
                "gradients",
                "curves",
                "limits",
                "features",
                "basedOn")) {
            typed.put(field, form.typed(field));
        }
        return typed;
    }

    private MvcTestResult post(String uri, Map<String, String> typed) {
        AbstractMockHttpServletRequestBuilder<?> request = mvc.post().uri(uri).with(csrf());
        typed.forEach(request::param);
        return mvc.perform(request);
    }

    /** The clock, zone and actor that the platform gives. */
    @TestConfiguration
    static class Platform {

        @Bean
        CurrentActor actor() {
            return () -> new CurrentActor.Actor("Somebody");
        }

        @Bean
        Clock clock() {
            return Clock.fixed(Instant.parse("2030-05-06T09:00:00Z"), ZoneOffset.UTC);
        }

        @Bean
        ZoneId zone() {
            return ZoneOffset.UTC;
        }
    }
}
