package org.crosshead.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.sql.DataSource;
import org.crosshead.briefing.HandPointDraft.HandSpot;
import org.crosshead.briefing.HandPointDraft.Kind;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.FiremanPlan;
import org.crosshead.briefing.document.HandRow;
import org.crosshead.briefing.document.Heading;
import org.crosshead.briefing.document.Inputs;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Road;
import org.crosshead.briefing.document.Since;
import org.crosshead.briefing.document.Standing;
import org.crosshead.briefing.document.Sureness;
import org.crosshead.briefing.document.Term;
import org.crosshead.kernel.figure.Figure;
import org.crosshead.kernel.figure.Input;
import org.crosshead.kernel.figure.Step;
import org.crosshead.kernel.figure.StepKind;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.TrainKind;
import org.crosshead.working.TrainDraft;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import tools.jackson.databind.json.JsonMapper;

/** What every database must do with briefings. */
abstract class BriefingStoreContract {

    private static final Instant MADE = Instant.parse("2026-03-04T05:06:07.123456Z");
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

    private JdbcClient jdbc;
    private BriefingStore store;
    private long trainId;

    abstract DataSource dataSource();

    @BeforeEach
    void setUp() {
        Flyway.configure()
                .dataSource(dataSource())
                .locations("classpath:db/migration")
                .load()
                .migrate();
        jdbc = JdbcClient.create(dataSource());
        store = new BriefingStore(jdbc, JsonMapper.builder().build());
        jdbc.sql("delete from briefing_acknowledgement").update();
        jdbc.sql("delete from briefing").update();
        jdbc.sql("delete from hand_point").update();
        jdbc.sql("delete from train where code = 'B1'").update();
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        jdbc.sql(
                        "insert into train (version, code, running_day, cancelled, current_revision) values (1, 'B1', ?, false, 0)")
                .param(DAY)
                .update(key, "id");
        trainId = Objects.requireNonNull(key.getKey()).longValue();
    }

    private static BriefingDocument document() {
        Heading heading = new Heading(
                "B1",
                "Here to There",
                DAY,
                TrainKind.PASSENGER,
                "Here",
                MADE,
                "There",
                MADE.plusSeconds(3_600),
                "UTC",
                List.of(),
                List.of(),
                null,
                RailState.DAMP,
                "rain \"<b>\" \u00e9",
                true);
        Road road = new Road(
                1_000,
                List.of(0.0, 1_000.0),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Road.Forecast(
                        List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()));
        Step step = new Step(
                StepKind.FORMULA,
                "s",
                "a * b",
                List.of(new Input("a", 2, "", "x"), new Input("b", 0.1, "", "y")),
                0.2,
                "m",
                "z");
        TrainDraft draft = new TrainDraft(
                "B1",
                "t",
                DAY,
                TrainKind.PASSENGER,
                null,
                RailState.DAMP,
                "",
                true,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new BriefingDocument(
                BriefingDocument.SCHEMA,
                heading,
                MADE,
                "Somebody",
                List.of(),
                List.of(Phrase.of("missing.class", Term.text("X"), Term.number(1.5, "psi"))),
                List.of(),
                List.of(),
                road,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of("k", Figure.of(List.of(step))),
                new Inputs(draft, Map.of("route:R", 7L), List.of(), Map.of("p", 1.1)),
                new Since(1, List.of(new Since.Change("booked", null, Phrase.of("change.text", Term.text("A")), null))),
                new Standing(List.of(), 3),
                List.of(),
                new Sureness(
                        200,
                        List.of(Phrase.of("sure.coal", Term.number(1, "lb"))),
                        List.of(new Sureness.Arrival("Somewhere", MADE, MADE, null, 3)),
                        new Sureness.Along(
                                List.of(0.0, 10.0),
                                List.of(1.0, 2.0),
                                List.of(2.0, 3.0),
                                List.of(50.0, 51.0),
                                List.of(60.0, 61.0))),
                List.of(new HandRow(4, "note", Phrase.of("hand.note"), "Because", "I", "applied", null, null)),
                new FiremanPlan(
                        List.of(10.0),
                        List.of(new FiremanPlan.Stretch(1, 2)),
                        List.of(),
                        List.of(new FiremanPlan.Row(
                                "A",
                                "B",
                                Term.number(1, "lb"),
                                Term.number(2, "gal"),
                                "even",
                                "open",
                                Term.number(3, "psi"),
                                Term.number(50, "%"),
                                List.of(Phrase.of("fireman.room"))))));
    }

    private static BriefingStore.Issue issue(int number) {
        return new BriefingStore.Issue(number, MADE, "I", null);
    }

    @Test
    void changeByHandComesBackAsItWasStoredUntilItIsWithdrawn() {
        HandPointStore points = new HandPointStore(jdbc);
        HandSpot here = new HandSpot("R", 12.5, 1_000.25);
        HandSpot there = new HandSpot("R", 13, 1_010);
        List<HandPointDraft> drafts = List.of(
                new HandPointDraft(Kind.SET, here, null, 0.5, 0.25, "", "Because"),
                new HandPointDraft(Kind.SET, here, null, 0.0, null, "", "Because"),
                new HandPointDraft(Kind.MOVED, here, there, null, null, "", "Because"),
                new HandPointDraft(Kind.NOTE, here, null, null, null, "Look \"out\" <b>\u00e9", "Because"));
        drafts.forEach(draft -> points.insert(trainId, draft, MADE, "I"));
        assertThat(points.of(trainId)).extracting(HandPoint::draft).isEqualTo(drafts);
        assertThat(points.of(trainId)).extracting(HandPoint::enteredAt).containsOnly(MADE);
        long first = points.of(trainId).get(0).id();
        assertThat(points.withdraw(trainId + 1, first, MADE, "I")).isFalse();
        assertThat(points.withdraw(trainId, first, MADE, "I")).isTrue();
        assertThat(points.withdraw(trainId, first, MADE, "I")).isFalse();
        assertThat(points.of(trainId)).hasSize(3);
    }

    @Test
    void documentComesBackAsItWasStored() {
        long id = store.insert(trainId, document());
        StoredBriefing found = store.find(id).orElseThrow();
        assertThat(found.document()).isEqualTo(document());
        assertThat(found.state()).isEqualTo(BriefingState.PREPARED);
        assertThat(found.issueNumber()).isNull();
        assertThat(store.find(id + 1_000)).isEmpty();
    }

    @Test
    void issueIsNumberedOnceAndReplacesTheOneBefore() {
        long first = store.insert(trainId, document());
        assertThat(store.issue(first, issue(store.nextIssueNumber(trainId)))).isTrue();
        assertThat(store.issue(first, issue(9))).isFalse();
        long second = store.insert(trainId, document());
        store.replaceIssued(trainId);
        assertThat(store.nextIssueNumber(trainId)).isEqualTo(2);
        assertThat(store.issue(second, issue(2))).isTrue();
        assertThat(store.ofTrain(trainId))
                .extracting(BriefingSummary::state)
                .containsExactly(BriefingState.ISSUED, BriefingState.REPLACED);
    }

    @Test
    void issueInForceAndWhyItWasIssuedAreFound() {
        assertThat(store.inForce(trainId)).isEmpty();
        long id = store.insert(trainId, document());
        assertThat(store.inForce(trainId)).isEmpty();
        store.issue(id, new BriefingStore.Issue(1, MADE, "I", "Assistance is ordered"));
        assertThat(store.inForce(trainId)).hasValueSatisfying(found -> {
            assertThat(found.number()).isEqualTo(1);
            assertThat(found.document()).isEqualTo(document());
        });
        assertThat(store.find(id).orElseThrow().issuedDespite()).isEqualTo("Assistance is ordered");
    }

    /** A document of the first schema has no part that tells what changed, nor whether the train is heated. */
    @Test
    void documentOfTheFirstSchemaIsStillRead() {
        long id = store.insert(trainId, document());
        String now = jdbc.sql("select document from briefing where id = ?")
                .param(id)
                .query(String.class)
                .single();
        int since = now.indexOf(",\"since\"");
        assertThat(since).isPositive();
        assertThat(now).contains("\"heated\":false,");
        jdbc.sql("update briefing set document = ?, schema_version = 1 where id = ?")
                .params(now.substring(0, since).replace("\"heated\":false,", "") + "}", id)
                .update();
        assertThat(store.find(id).orElseThrow().document().since()).isNull();
        assertThat(store.find(id).orElseThrow().document().standing()).isNull();
    }

    @Test
    void onlyWhatWasNeverIssuedCanGo() {
        long issued = store.insert(trainId, document());
        store.issue(issued, issue(1));
        long prepared = store.insert(trainId, document());
        store.deletePrepared(trainId);
        assertThat(store.find(issued)).isPresent();
        assertThat(store.find(prepared)).isEmpty();
    }

    @Test
    void acknowledgementCountsOnceByItsIdAndByItsPerson() {
        long id = store.insert(trainId, document());
        store.issue(id, issue(1));
        Acknowledgement reading = new Acknowledgement("D-1", "Driver", MADE, MADE.plusSeconds(60));
        assertThat(store.acknowledge(id, "one", reading)).isTrue();
        assertThat(store.acknowledge(id, "one", reading)).isFalse();
        assertThat(store.acknowledge(id, "two", reading)).isFalse();
        assertThat(store.acknowledgements(id)).singleElement().satisfies(found -> {
            assertThat(found.staffNumber()).isEqualTo("D-1");
            assertThat(found.deviceTime()).isEqualTo(MADE);
        });
    }

    @Test
    void policyFiguresHoldFromTheirDay() {
        Policy policy = new Policy(jdbc);
        assertThat(policy.on(DAY)).containsKeys(Policy.BRAKING_MARGIN, Policy.REACTION_TIME, Policy.LANDMARK_REACH);
        assertThat(policy.on(LocalDate.of(2019, 1, 1))).isEmpty();
    }
}
