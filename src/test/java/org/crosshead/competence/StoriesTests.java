package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.crosshead.Acting;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.crew.People;
import org.crosshead.crew.Post;
import org.crosshead.exchange.Importer;
import org.crosshead.exchange.Upload;
import org.crosshead.platform.ServiceJob;
import org.crosshead.route.Direction;
import org.crosshead.routeknowledge.LearningNeeds;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.transaction.annotation.Transactional;

/**
 * Stories of an invented line, from Stennerby over Corrie Summit to Aldbeck, 15.9 miles, with a way round over Milnton: a lapsed road, a
 * diversion, a new class, an auditor's question. The engines are those of the demonstration.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:permits;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@Transactional
class StoriesTests {

    private static final String INA = "S-01";
    private static final String TOM = "S-02";
    private static final String RAY = "S-03";
    private static final String SAM = "S-04";
    private static final String PETRA = "S-05";
    private static final String FIREMAN = "S-06";
    private static final String FINCH = "S-07";
    private static final String GUEST = "S-08";
    private static final Subject HV3 = new Subject(Subject.Kind.SECTION, "HV3-DN");
    private static final Subject MX1 = new Subject(Subject.Kind.SECTION, "MX1-DN");
    private static final Subject THANE = new Subject(Subject.Kind.CLASS, "A8");

    @Autowired
    private Importer importer;

    @Autowired
    private RouteSections sections;

    @Autowired
    private KnowledgePolicyDesk desk;

    @Autowired
    private Permits permits;

    @Autowired
    private Decisions decisions;

    @Autowired
    private ConductorDrivers conductors;

    @Autowired
    private Diversions diversions;

    @Autowired
    private ClassGuides guides;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private Trains trains;

    @Autowired
    private People people;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @BeforeEach
    void line() {
        List<Upload> files = new ArrayList<>();
        files.add(file("routes.csv", """
                code,name,measure_unit,rising_name,falling_name,from_measure,to_measure,lines,estimates_accepted
                HV,Hexmoor Vale line,CHAINS,Down,Up,0m 0ch,15m 72ch,Single line,no
                MX,Way round over Milnton,CHAINS,Down,Up,0m 0ch,18m 24ch,Single line,no
                """));
        files.add(file("gradients.csv", """
                route_code,from_measure,to_measure,notation,value,origin,note
                HV,0m 0ch,4m 16ch,ONE_IN,300,SURVEYED,invented
                HV,4m 16ch,9m 48ch,ONE_IN,60,SURVEYED,invented
                HV,9m 48ch,15m 72ch,ONE_IN,-90,SURVEYED,invented
                MX,0m 0ch,18m 24ch,LEVEL,,SURVEYED,invented
                """));
        files.add(file("junctions.csv", """
                name,route_code,at_measure,other_route_code,other_measure
                Wharrick Road Junction,HV,4m 16ch,MX,0m 0ch
                Aldbeck Junction,MX,18m 24ch,HV,15m 72ch
                """));
        files.add(file("features.csv", """
                route_code,kind,at_measure,to_measure,name,scope,line,detail,sighting,length,length_unit,seen_by_day,seen_by_night,origin,note
                HV,STATION,0m 0ch,0m 2ch,Stennerby,BOTH,,,,420,FEET,yes,yes,SURVEYED,invented
                HV,STATION,4m 14ch,4m 18ch,Wharrick Road,BOTH,,,,420,FEET,yes,yes,SURVEYED,invented
                HV,STATION,9m 46ch,9m 50ch,Corrie Summit,BOTH,,,,420,FEET,yes,yes,SURVEYED,invented
                HV,STATION,15m 68ch,15m 72ch,Aldbeck,BOTH,,,,420,FEET,yes,yes,SURVEYED,invented
                MX,STATION,18m 20ch,18m 24ch,Aldbeck,BOTH,,,,420,FEET,yes,yes,SURVEYED,invented
                """));
        files.add(file("people.csv", """
                staff_number,name
                S-01,Ina Broadbent
                S-02,Tom Arkwell
                S-03,Ray Dunmore
                S-04,Sam Ruddock
                S-05,Petra Loom
                S-06,Nell Sparrow
                S-07,Lorne Finch
                S-08,Guest Instructor
                """));
        files.add(file("posts.csv", """
                staff_number,post,first_day,last_day
                S-01,DRIVER,D-3000,
                S-02,DRIVER,D-3000,
                S-03,DRIVER,D-3000,
                S-04,DRIVER,D-3000,
                S-05,DRIVER,D-3000,
                S-06,FIREMAN,D-3000,
                S-07,ASSESSOR,D-3000,
                S-08,INSPECTOR,D-10,
                S-08,ASSESSOR,D-10,
                """));
        files.add(file("sections.csv", """
                code,title,route_code,from_measure,to_measure,direction,band,hard,teacher,line,trips,trips_dark,trips_driven,trips_bad_weather,trips_refresher
                HV1-DN,Stennerby to Wharrick Road,HV,0m 0ch,4m 16ch,RISING,USUAL,Gates,S-02,,,,,,
                HV2-DN,Wharrick Road to Corrie Summit,HV,4m 16ch,9m 48ch,RISING,USUAL,Three miles of 1 in 60,S-02,,,,,,
                HV3-DN,Corrie Summit to Aldbeck,HV,9m 48ch,15m 72ch,RISING,USUAL,Tunnel with wet rail,S-04,,,,,,
                MX1-DN,Wharrick Road to Aldbeck over Milnton,MX,0m 0ch,18m 24ch,RISING,USUAL,Wires,S-05,,,,,,
                """));
        files.add(file("trains.csv", """
                code,title,day,kind,formation_code,rail,weather,dark,heated
                2E07,Stennerby to Aldbeck,D+0,PASSENGER,EXPRESS9,DRY,fair,no,no
                """));
        files.add(file("legs.csv", """
                train_code,day,route_code,from_measure,to_measure,line,direction,tender_first
                2E07,D+0,HV,0m 0ch,15m 72ch,Single line,RISING,no
                """));
        files.add(file("calls.csv", """
                train_code,day,leg_number,at_measure,place,stops,arrival,departure,takes_water
                2E07,D+0,1,0m 0ch,Stennerby,yes,,05:10,no
                2E07,D+0,1,4m 16ch,Wharrick Road,yes,05:20,05:22,no
                2E07,D+0,1,9m 48ch,Corrie Summit,yes,05:38,05:40,no
                2E07,D+0,1,15m 72ch,Aldbeck,yes,05:55,,no
                """));
        files.add(file("engine-turns.csv", """
                train_code,day,engine_number,position,from_place,to_place,pressure_psi,glass_share,water_gallons,coal_cwt
                2E07,D+0,401,FRONT,,,220,0.8,,
                """));
        files.add(file("crew-slots.csv", """
                train_code,day,staff_number,role,engine_number,from_place,to_place,book_on,book_off
                2E07,D+0,S-01,DRIVER,401,,,04:30,07:30
                2E07,D+0,S-06,FIREMAN,401,,,04:30,07:30
                """));
        StringBuilder known = new StringBuilder("staff_number,event,subject,subject_code,day,other,until,note\n");
        for (String driver : List.of(INA, TOM, RAY, SAM, PETRA)) {
            held(known, driver, "SECTION", "HV1-DN", 30);
            held(known, driver, "SECTION", "HV2-DN", 30);
            held(known, driver, "CLASS", "E4", 30);
        }
        held(known, FIREMAN, "CLASS", "E4", 30);
        held(known, INA, "SECTION", "HV3-DN", 430);
        held(known, TOM, "SECTION", "HV3-DN", 400);
        known.append("S-02,WORKED,SECTION,HV3-DN,D-115,,,2E05\n");
        held(known, RAY, "SECTION", "HV3-DN", 390);
        held(known, SAM, "SECTION", "HV3-DN", 30);
        held(known, PETRA, "SECTION", "MX1-DN", 20);
        files.add(file("knowledge.csv", known.toString()));
        ServiceJob.run(Set.of("INSPECTOR", "MANAGER"), () -> {
            importer.enter(files, "a story");
            sections.all().stream()
                    .filter(section -> section.routeCode().equals("HV")
                            || section.routeCode().equals("MX"))
                    .forEach(section -> sections.approve(section.code(), section.version()));
        });
    }

    private static Upload file(String name, String text) {
        return Upload.of(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void held(StringBuilder known, String person, String kind, String code, int daysAgo) {
        known.append("%s,TAKEN_OVER,%s,%s,D-%d,A-01,,ledger of the line\n".formatted(person, kind, code, daysAgo));
    }

    private long person(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow().id();
    }

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    private Train train() {
        return trains.find("2E07", today()).orElseThrow();
    }

    private Permit told() {
        return permits.of(train().id());
    }

    private Permit.Line line(Permit permit, Subject subject) {
        return permit.lines().stream()
                .filter(one -> one.holding().subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private static void office(Runnable work) {
        ServiceJob.run(Set.of("MANAGER", "INSPECTOR"), work);
    }

    private void as(String staffNumber, String post, Runnable work) {
        Acting.as(person(staffNumber), post, work);
    }

    private void refused(String code, Runnable work) {
        assertThatThrownBy(work::run).isInstanceOf(ActRefusedException.class).hasMessage(code);
    }

    private void enter(String staffNumber, Kind kind, Subject subject, String other, String note) {
        knowledge.enter(new Knowledge.Entry(person(staffNumber), kind, subject, today(), person(other), null, note));
    }

    private static TrainDraft with(
            TrainDraft draft,
            List<TrainDraft.Leg> legs,
            List<TrainDraft.Call> calls,
            List<TrainDraft.EngineTurn> engines,
            List<CrewSlot> crew) {
        return new TrainDraft(
                draft.code(),
                draft.title(),
                draft.day(),
                draft.kind(),
                draft.formationCode(),
                draft.rail(),
                draft.weather(),
                draft.dark(),
                draft.heated(),
                legs,
                calls,
                engines,
                crew);
    }

    private void change(TrainDraft draft) {
        Train train = train();
        office(() -> trains.change(train.id(), train.version(), draft, "a story goes on"));
    }

    /** Adds somebody who rides with the train from one stop to another. */
    private void rides(String staffNumber, @Nullable String from, @Nullable String to) {
        TrainDraft draft = train().content();
        List<CrewSlot> crew = new ArrayList<>(draft.crew());
        CrewSlot first = crew.get(0);
        crew.add(new CrewSlot(
                staffNumber, Post.INSPECTOR, first.engineNumber(), from, to, first.bookOn(), first.bookOff()));
        change(with(draft, draft.legs(), draft.calls(), draft.engines(), crew));
    }

    /** A lapsed road: refused alone, conducted over it alone; what was driven conducted brings nothing back. */
    @Test
    void lapsedRoadIsConductedAndStaysLapsed() {
        Permit alone = told();
        assertThat(alone.answer()).isEqualTo(Answer.REFUSED);
        assertThat(alone.lines())
                .filteredOn(one -> one.answer() != Answer.ALLOWED)
                .extracting(one -> one.holding().subject())
                .containsExactly(HV3);
        assertThat(line(alone, HV3).conductors())
                .as("Ray Dunmore has lapsed himself")
                .contains(person(TOM), person(SAM))
                .doesNotContain(person(RAY));
        rides(TOM, "Corrie Summit", "Aldbeck");
        long train = train().id();
        assertThat(told().answer()).as("he has not said that he conducts").isEqualTo(Answer.REFUSED);
        office(() -> conductors.ask(train, person(INA), person(TOM), Conducting.Case.OWN_RULE, null));
        as(TOM, "DRIVER", () -> conductors.answer(conductors.own().get(0).id(), true));
        Permit conducted = told();
        assertThat(conducted.answer()).isEqualTo(Answer.CONDUCTED);
        assertThat(line(conducted, HV3).conductors()).containsExactly(person(TOM));
        assertThat(line(conducted, HV3).rides()).isEqualTo("Corrie Summit \u2013 Aldbeck");
        office(() -> permits.confirm(train, false));
        Holding after = knowledge.holding(person(INA), HV3, today(), clock.instant());
        assertThat(after.state()).isEqualTo(Holding.State.LAPSED);
        assertThat(knowledge.latestEvents(person(TOM), 5))
                .extracting(CompetenceEvent::kind)
                .contains(Kind.CONDUCTED);
    }

    /**
     * A yard of 70 chains at 1 in 300 in front of the line, which nobody has signed. Where the policy takes the exemption for easy grades
     * (49 CFR 240.231(c), from memory) it is named; else the records do not answer it.
     */
    @Test
    void shortEasyStretchAsksNoPilotWhereThePolicySaysSo() {
        Subject yard = new Subject(Subject.Kind.SECTION, "HV0-DN");
        ServiceJob.run(Set.of("INSPECTOR", "MANAGER"), () -> {
            importer.enter(List.of(file("sections.csv", """
                            code,title,route_code,from_measure,to_measure,direction,band,hard
                            HV0-DN,Stennerby yard,HV,0m 0ch,0m 70ch,RISING,EASY,Points by hand
                            HV1-DN,Stennerby yard to Wharrick Road,HV,0m 70ch,4m 16ch,RISING,USUAL,Gates
                            """)), "a yard");
            List.of("HV0-DN", "HV1-DN")
                    .forEach(code -> sections.approve(
                            code, sections.find(code).orElseThrow().version()));
        });
        assertThat(line(told(), yard).answer()).isEqualTo(Answer.REFERRED);
        KnowledgePolicy usual = desk.all().get(0);
        Acting.as(
                person(TOM),
                "MANAGER",
                () -> desk.propose(new KnowledgePolicy(
                        0,
                        today(),
                        usual.lapseMonths(),
                        usual.classLapseMonths(),
                        usual.assessmentMonths(),
                        usual.warnDays(),
                        usual.keepsAlive(),
                        usual.verifies(),
                        usual.needs(),
                        usual.hours(),
                        new KnowledgePolicy.Upkeep(12, true, 2, true, 14),
                        usual.regime(),
                        "",
                        "")));
        int version = desk.all().get(0).version();
        office(() -> desk.approve(version));
        Permit.Line exempt = line(told(), yard);
        assertThat(exempt.answer()).isEqualTo(Answer.EXEMPT);
        assertThat(exempt.why()).isEqualTo("exempt-easy-grades");
        assertThat(told().policyVersion()).isEqualTo(version);
        assertThat(told().answer()).as("HV3 is lapsed all the same").isEqualTo(Answer.REFUSED);
        office(() -> decisions.decide(train().id(), Decision.Occasion.ASKED));
        Decision kept = decisions.latest(train().id()).orElseThrow();
        assertThat(kept.permit().lines()).contains(exempt);
        assertThat(kept.kept().again().lines())
                .as("asked again from what is kept")
                .contains(exempt);
    }

    /** He joins between stops: that he cannot. */
    @Test
    void conductorDriverJoinsAtABookedStop() {
        TrainDraft draft = train().content();
        List<TrainDraft.Call> calls = draft.calls().stream()
                .map(call -> call.place().equals("Corrie Summit")
                        ? new TrainDraft.Call(
                                call.legNumber(), call.atMeasure(), call.place(), false, null, call.departure(), false)
                        : call)
                .toList();
        change(with(draft, draft.legs(), calls, draft.engines(), draft.crew()));
        rides(TOM, "Corrie Summit", "Aldbeck");
        long train = train().id();
        office(() -> refused(
                "conducting-not-aboard",
                () -> conductors.ask(train, person(INA), person(TOM), Conducting.Case.OWN_RULE, null)));
        assertThat(line(told(), HV3).rides())
                .as("the last booked stop before it")
                .isEqualTo("Wharrick Road \u2013 Aldbeck");
    }

    /** A diversion: known beforehand to bar nobody, and refused once the train has taken it; who knows the way round is named. */
    @Test
    void diversionIsToldBeforehandAndDecidedOnOnceItIsTaken() {
        TrainDraft draft = train().content();
        List<CrewSlot> sam = draft.crew().stream()
                .map(slot -> slot.staffNumber().equals(INA)
                        ? new CrewSlot(SAM, slot.role(), slot.engineNumber(), null, null, slot.bookOn(), slot.bookOff())
                        : slot)
                .toList();
        change(with(draft, draft.legs(), draft.calls(), draft.engines(), sam));
        long train = train().id();
        assertThat(told().answer()).isEqualTo(Answer.ALLOWED);
        office(() -> diversions.plan(train, "MX", "Single line", 0, 1_464));
        assertThat(told().answer()).isEqualTo(Answer.ALLOWED);
        assertThat(told().detours()).extracting(Permit.Line::answer).containsExactly(Answer.REFUSED);
        TrainDraft.Call aldbeck = draft.calls().get(3);
        change(with(
                draft,
                List.of(
                        new TrainDraft.Leg("HV", 0, 336, "Single line", Direction.RISING, false),
                        new TrainDraft.Leg("MX", 0, 1_464, "Single line", Direction.RISING, false)),
                List.of(
                        draft.calls().get(0),
                        draft.calls().get(1),
                        new TrainDraft.Call(2, 1_464, "Aldbeck", true, aldbeck.arrival(), null, false)),
                draft.engines(),
                sam));
        Permit diverted = told();
        assertThat(diverted.answer()).isEqualTo(Answer.REFUSED);
        assertThat(line(diverted, MX1).conductors()).containsExactly(person(PETRA));
        assertThat(diverted.instead()).first().satisfies(one -> {
            assertThat(one.personId()).isEqualTo(person(PETRA));
            assertThat(one.lacks()).isEmpty();
        });
    }

    /** A class that is new: nobody may drive it but under a guest instructor, recognised by letter, who does not sign whom they taught alone. */
    @Test
    void newClassBeginsWithAGuestInstructor() {
        office(() -> guides.enter(new ClassGuides.Draft(
                "A8",
                "E4",
                "Steam reverser, two brakes, exhaust injector.",
                GUEST,
                new LearningNeeds(2, 0, 2, 0, 1),
                today())));
        office(() -> guides.approve("A8", guides.find("A8").orElseThrow().version()));
        TrainDraft draft = train().content();
        List<TrainDraft.EngineTurn> thane = List.of(
                new TrainDraft.EngineTurn("803", TrainDraft.EnginePosition.FRONT, null, null, 190, 0.75, null, null));
        List<CrewSlot> crew = draft.crew().stream()
                .map(slot -> new CrewSlot(
                        slot.staffNumber().equals(INA) ? SAM : slot.staffNumber(),
                        slot.role(),
                        "803",
                        null,
                        null,
                        slot.bookOn(),
                        slot.bookOff()))
                .toList();
        change(with(draft, draft.legs(), draft.calls(), thane, crew));
        assertThat(told().answer()).as("nobody holds it since it came").isEqualTo(Answer.REFERRED);
        rides(GUEST, null, null);
        assertThat(told().answer()).isEqualTo(Answer.REFERRED);
        office(() -> knowledge.enter(new Knowledge.Entry(
                person(GUEST),
                Kind.RECOGNISED,
                THANE,
                today(),
                null,
                null,
                today().plusDays(3),
                null,
                "letter of the owners")));
        assertThat(told().answer()).isEqualTo(Answer.INSTRUCTED);
        assertThat(line(told(), THANE).conductors()).containsExactly(person(GUEST));
        office(() -> permits.confirm(train().id(), true));
        assertThat(knowledge.latestEvents(person(SAM), 9))
                .filteredOn(event -> event.subject().equals(THANE))
                .extracting(CompetenceEvent::kind, CompetenceEvent::circumstances)
                .contains(tuple(Kind.LEARNED, Set.of(Circumstance.BAD_WEATHER)));
        as(SAM, "DRIVER", () -> refused("trips-missing", () -> enter(SAM, Kind.DECLARED, THANE, SAM, "")));
        office(() -> knowledge.enter(new Knowledge.Entry(
                person(SAM), Kind.LEARNED, THANE, today().minusDays(1), person(GUEST), null, "second turn")));
        as(SAM, "DRIVER", () -> enter(SAM, Kind.DECLARED, THANE, SAM, ""));
        as(
                GUEST,
                "ASSESSOR",
                () -> refused("assessor-taught", () -> enter(SAM, Kind.PRACTICE_PASSED, THANE, GUEST, "")));
        as(
                FINCH,
                "ASSESSOR",
                () -> refused("letter-missing", () -> enter(SAM, Kind.PRACTICE_PASSED, THANE, FINCH, "")));
    }

    /** An auditor asks why he was on the train: the decision says on what it rested, and a correction entered later leaves it as it was. */
    @Test
    void auditorFindsTheDecisionAsItWasMade() {
        TrainDraft draft = train().content();
        List<CrewSlot> tom = draft.crew().stream()
                .map(slot -> slot.staffNumber().equals(INA)
                        ? new CrewSlot(TOM, slot.role(), slot.engineNumber(), null, null, slot.bookOn(), slot.bookOff())
                        : slot)
                .toList();
        change(with(draft, draft.legs(), draft.calls(), draft.engines(), tom));
        long train = train().id();
        as(TOM, "DRIVER", () -> decisions.decide(train, Decision.Occasion.BOOKING_ON));
        Decision made = decisions.latest(train).orElseThrow();
        assertThat(made.permit().answer()).isEqualTo(Answer.ALLOWED);
        Permit.Line road = line(made.permit(), HV3);
        assertThat(road.holding().lastWorked()).isEqualTo(today().minusDays(115));
        assertThat(road.holding().because()).hasSize(2);
        long worked = road.holding().because().get(1);
        office(() -> knowledge.enter(new Knowledge.Entry(
                person(TOM), Kind.STRUCK, HV3, today(), null, worked, "had not driven it that day")));
        assertThat(knowledge.holding(person(TOM), HV3, today(), clock.instant()).state())
                .isEqualTo(Holding.State.LAPSED);
        office(() -> decisions.decide(train, Decision.Occasion.ASKED));
        assertThat(decisions.latest(train).orElseThrow().permit().answer()).isEqualTo(Answer.REFUSED);
        assertThat(decisions.of(train))
                .filteredOn(one -> one.id() == made.id())
                .singleElement()
                .satisfies(kept -> {
                    assertThat(kept.permit().answer()).isEqualTo(Answer.ALLOWED);
                    assertThat(kept.kept().again().saysTheSame(made.permit())).isTrue();
                });
    }
}
