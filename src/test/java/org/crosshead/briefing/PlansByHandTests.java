package org.crosshead.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.HandPointDraft.Kind;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.HandRow;
import org.crosshead.briefing.document.HandlingRow;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.platform.ServiceJob;
import org.crosshead.working.DayShift;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;

/** Plans of the demonstration railway, changed by hand. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:plans-by-hand;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
class PlansByHandTests {

    @Autowired
    private Briefings briefings;

    @Autowired
    private PlansByHand plans;

    @Autowired
    private HandPointStore store;

    @Autowired
    private Trains trains;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Autowired
    private MockMvc mvc;

    private long trainId;
    private long id;

    private static <T> T asInspector(Supplier<T> job) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<RuntimeException> refused = new AtomicReference<>();
        ServiceJob.run(Set.of("INSPECTOR"), () -> {
            try {
                result.set(job.get());
            } catch (BriefingRefusedException ex) {
                refused.set(ex);
            }
        });
        RuntimeException why = refused.get();
        if (why != null) {
            throw why;
        }
        return Objects.requireNonNull(result.get());
    }

    @BeforeEach
    void prepare() {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        trainId = trains.between(today, today).stream()
                .filter(train -> train.code().equals("1X01"))
                .findFirst()
                .orElseThrow()
                .id();
        id = asInspector(() -> briefings.prepare(trainId));
    }

    @AfterEach
    void withdrawAll() {
        store.of(trainId).forEach(point -> asInspector(() -> plans.withdraw(trainId, point.id())));
    }

    private BriefingDocument document(long briefing) {
        return asInspector(() -> briefings.show(briefing).document());
    }

    private static HandSpot spot(Place place) {
        return new HandSpot(place.routeCode(), place.measure(), place.positionM());
    }

    private HandlingRow planned(String action) {
        return document(id).handling().stream()
                .filter(row -> row.action().equals(action))
                .skip(1)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void noteIsToldAtItsPlaceAndKeptThroughEveryPreparation() {
        Place place = asInspector(() -> briefings.places(id)).get(20);
        HandPointDraft note =
                new HandPointDraft(Kind.NOTE, spot(place), null, null, null, "Cattle cross here", "Farmer's request");
        asInspector(() -> plans.enter(trainId, note));
        long again = asInspector(() -> briefings.prepare(trainId));
        assertThat(document(again).handling())
                .filteredOn(row -> row.action().equals("note"))
                .hasSize(1)
                .allSatisfy(row -> {
                    assertThat(row.place().positionM()).isCloseTo(place.positionM(), within(60.0));
                    assertThat(row.reason().kind()).isEqualTo("reason.set-by-hand");
                });
    }

    @Test
    void copyOfATrainTakesAlongWhatWasChangedByHand() {
        Place place = asInspector(() -> briefings.places(id)).get(20);
        asInspector(() -> plans.enter(
                trainId,
                new HandPointDraft(Kind.NOTE, spot(place), null, null, null, "Cattle cross here", "Farmer's request")));
        LocalDate later = LocalDate.now(clock.withZone(zone)).plusDays(9);
        long copy = asInspector(
                () -> trains.copy(trainId, later, new DayShift(zone)).id());
        assertThat(store.of(copy)).hasSize(1).allSatisfy(point -> {
            assertThat(point.draft().note()).isEqualTo("Cattle cross here");
            assertThat(point.enteredBy()).isEqualTo(store.of(trainId).get(0).enteredBy());
        });
        long briefing = asInspector(() -> briefings.prepare(copy));
        assertThat(document(briefing).handling())
                .filteredOn(row -> row.action().equals("note"))
                .hasSize(1);
    }

    @Test
    void movedPointIsToldWhereItIsMovedToWithItsCost() {
        HandlingRow meant = planned("notch-up");
        Place to = asInspector(() -> briefings.places(id)).stream()
                .filter(place -> place.positionM() > meant.place().positionM() + 300)
                .findFirst()
                .orElseThrow();
        long made = asInspector(() -> plans.enter(
                trainId,
                new HandPointDraft(Kind.MOVED, spot(meant.place()), spot(to), null, null, "", "Better seen at night")));
        HandRow row = document(made).changedByHand().get(0);
        assertThat(row.applied()).isTrue();
        assertThat(row.cost()).isNotNull();
        assertThat(document(made).handling())
                .anySatisfy(point -> {
                    assertThat(point.place().positionM()).isCloseTo(to.positionM(), within(1.0));
                    assertThat(point.reason().kind()).isEqualTo("reason.set-by-hand");
                })
                .noneSatisfy(point -> {
                    assertThat(point.action()).isEqualTo("notch-up");
                    assertThat(point.place().positionM())
                            .isCloseTo(meant.place().positionM(), within(1.0));
                });
    }

    @Test
    void withdrawnChangeLeavesThePlanAsItWas() {
        List<HandlingRow> before = document(id).handling();
        HandlingRow meant = planned("notch-up");
        asInspector(() -> plans.enter(
                trainId,
                new HandPointDraft(Kind.STRUCK, spot(meant.place()), null, null, null, "", "Not worth the trouble")));
        long pointId = store.of(trainId).get(0).id();
        long made = asInspector(() -> plans.withdraw(trainId, pointId));
        assertThat(document(made).handling()).isEqualTo(before);
        assertThat(document(made).changedByHand()).isEmpty();
    }

    @Test
    void issueIsOutOfDateOnceThePlanIsChangedByHand() {
        Place place = asInspector(() -> briefings.places(id)).get(20);
        asInspector(() -> {
            briefings.issue(id, "To be compared with");
            return id;
        });
        asInspector(() -> plans.enter(
                trainId, new HandPointDraft(Kind.NOTE, spot(place), null, null, null, "Cattle", "Farmer's request")));
        assertThat(asInspector(() -> briefings.show(id)).outOfDate())
                .extracting(Phrase::kind)
                .containsExactly("out-of-date.hand-new");
    }

    @Test
    void changeThatBreaksALimitIsRefusedWithItsPlaceAndNothingIsKept() {
        List<Place> places = asInspector(() -> briefings.places(id));
        HandPointDraft open =
                new HandPointDraft(Kind.SET, spot(places.get(3)), null, 1.0, 0.75, "", "To see what comes of it");
        assertThatThrownBy(() -> asInspector(() -> plans.enter(trainId, open)))
                .isInstanceOfSatisfying(BriefingRefusedException.class, refused -> {
                    assertThat(refused.code()).startsWith("hand-low-");
                    assertThat(refused.place()).isPresent();
                });
        assertThat(store.of(trainId)).isEmpty();
        assertThat(document(id).changedByHand()).isEmpty();
    }

    @Test
    void formSaysWhatIsWrongAndKeepsWhatWasTyped() throws Exception {
        for (String[] wrong :
                new String[][] {{"cutoff", "much"}, {"cutoff", "90"}, {"at", "nowhere"}, {"reason", "no"}}) {
            String at = String.valueOf(
                    asInspector(() -> briefings.places(id)).get(5).positionM());
            mvc.perform(post("/briefings/{id}/by-hand", id)
                            .param("kind", "SET")
                            .param("regulator", "1")
                            .param("cutoff", wrong[0].equals("cutoff") ? wrong[1] : "25")
                            .param("at", wrong[0].equals("at") ? wrong[1] : at)
                            .param("reason", wrong[0].equals("reason") ? wrong[1] : "A good reason")
                            .with(csrf())
                            .with(user("inspector").roles("INSPECTOR")))
                    .andExpect(status().is3xxRedirection())
                    .andExpect(flash().attributeExists("refused", "form"));
        }
        assertThat(store.of(trainId)).isEmpty();
    }

    @Test
    void pageIsForInspectorsOnly() throws Exception {
        mvc.perform(get("/briefings/{id}/by-hand", id).with(user("inspector").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Move or strike a point of the plan")));
        mvc.perform(get("/briefings/{id}/by-hand", id).with(user("driver").roles("DRIVER")))
                .andExpect(status().isForbidden());
    }
}
