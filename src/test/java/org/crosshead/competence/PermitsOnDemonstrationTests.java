package org.crosshead.competence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
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
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.crosshead.Acting;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonDraft;
import org.crosshead.crew.PersonDraft.PostHeld;
import org.crosshead.crew.Post;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.ServiceJob;
import org.crosshead.platform.StartPageSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.Trains;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** May the crews of the demonstration railway take their trains? */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:permits;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@Transactional
class PermitsOnDemonstrationTests {

    @Autowired
    private Permits permits;

    @Autowired
    private Knowledge knowledge;

    @Autowired
    private RouteSections sections;

    @Autowired
    private Trains trains;

    @Autowired
    private People people;

    @Autowired
    private Clock clock;

    @Autowired
    private ZoneId zone;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private List<StartPageSection> startPage;

    @Autowired
    private Decisions decisions;

    @Autowired
    private SectionSurgery surgery;

    private LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }

    private long train(String code) {
        return trains.between(today(), today()).stream()
                .filter(train -> train.code().equals(code))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static <T> T asManager(Supplier<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        ServiceJob.run(Set.of("MANAGER", "INSPECTOR"), () -> result.set(work.get()));
        return java.util.Objects.requireNonNull(result.get());
    }

    private Permit told(String code) {
        return asManager(() -> permits.of(train(code)));
    }

    private long person(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow().id();
    }

    private Holding holding(String staffNumber, String section) {
        return knowledge.holding(
                person(staffNumber), new Subject(Subject.Kind.SECTION, section), today(), clock.instant());
    }

    @Test
    void driverWithOneLapsedSectionIsConductedByWhoGoesAlongAndHoldsIt() {
        Permit told = told("1X01");
        assertThat(told.answer()).isEqualTo(Answer.CONDUCTED);
        List<Permit.Line> conducted = told.lines().stream()
                .filter(line -> line.answer() == Answer.CONDUCTED)
                .toList();
        assertThat(conducted).hasSize(1);
        assertThat(conducted.get(0).holding().subject().code()).isEqualTo("CM-DN");
        assertThat(conducted.get(0).conductors()).containsExactly(person("I-01"));
    }

    @Test
    void driverAloneOnALapsedSectionIsRefusedAndWhoCouldConductIsNamed() {
        Permit told = told("4F12");
        assertThat(told.answer()).isEqualTo(Answer.REFUSED);
        Permit.Line refused = told.lines().stream()
                .filter(line -> line.answer() == Answer.REFUSED)
                .findFirst()
                .orElseThrow();
        assertThat(refused.holding().state()).isEqualTo(Holding.State.LAPSED);
        assertThat(refused.conductors()).contains(person("I-01"), person("D-05"));
        assertThat(told.instead()).extracting(Permit.Candidate::personId).startsWith(person("D-01"), person("D-05"));
    }

    @Test
    void everybodyElseMayAndEqualQuestionsHaveEqualAnswers() {
        for (String code : List.of("2K07", "0L36", "1A40", "2B51", "8S60")) {
            assertThat(told(code).answer()).as(code).isEqualTo(Answer.ALLOWED);
            assertThat(told(code)).isEqualTo(told(code));
        }
    }

    /** Who works by day and again the same night has not rested: 15:50 to 22:15 are 6 hours 25 minutes of 12. */
    @Test
    void nightTurnAfterADayTurnIsRefusedForWantOfRest() {
        Permit told = told("6U20");
        assertThat(told.answer()).isEqualTo(Answer.REFUSED);
        assertThat(told.lines()).allMatch(line -> line.answer() == Answer.ALLOWED);
        assertThat(told.bars()).extracting(Permit.Bar::code).containsOnly("rest-before");
        assertThat(told.bars().get(0).figures().get(0)).isCloseTo(6.417, within(0.001));
        assertThat(told("4F12").bars()).extracting(Permit.Bar::code).containsOnly("rest-after");
    }

    /** When the night turn is given to others, the day turn of its crew is decided on anew, since they rest now. */
    @Test
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    void trainsBesideOneThatIsCrewedAnewAreDecidedAnew() {
        long day = train("4F12");
        assertThat(decisions.latest(day).orElseThrow().permit().bars()).isNotEmpty();
        Train night = trains.find(train("6U20")).orElseThrow();
        TrainDraft content = night.content();
        TrainDraft uncrewed = new TrainDraft(
                content.code(),
                content.title(),
                content.day(),
                content.kind(),
                content.formationCode(),
                content.rail(),
                content.weather(),
                content.dark(),
                content.heated(),
                content.legs(),
                content.calls(),
                content.engines(),
                List.of());
        asManager(() -> trains.change(night.id(), night.version(), uncrewed, "crew to be found"));
        Decision anew = decisions.latest(day).orElseThrow();
        assertThat(anew.occasion()).isEqualTo(Decision.Occasion.CHANGED);
        assertThat(anew.permit().bars()).isEmpty();
        long version = trains.find(night.id()).orElseThrow().version();
        asManager(() -> trains.change(night.id(), version, content, "the same crew again"));
        assertThat(decisions.latest(day).orElseThrow().permit().bars()).isNotEmpty();
    }

    private void know(String staffNumber, Kind kind, Subject subject) {
        asManager(() -> knowledge.enter(
                new Knowledge.Entry(person(staffNumber), kind, subject, today(), person("I-01"), null, "for a test")));
    }

    /** By daylight only: refused at night; tender first on the branch: refused chimney first only. */
    @Test
    void limitsAreMetByTrainsInTheDarkAndTenderFirst() {
        Subject branch = told("2B51").lines().get(0).holding().subject();
        know("D-04", Kind.DAY_ONLY, branch);
        assertThat(told("2B51").answer()).isEqualTo(Answer.ALLOWED);
        know("D-04", Kind.CHIMNEY_FIRST_ONLY, branch);
        assertThat(told("2B51").answer()).isEqualTo(Answer.REFUSED);
        assertThat(told("2B51").lines().get(0).why()).isEqualTo("limit-chimney");
        know("D-04", Kind.LIMITS_LIFTED, branch);
        assertThat(told("2B51").answer()).isEqualTo(Answer.ALLOWED);
    }

    /** Decided when crewed; again when what the crew hold changes, once for a whole transaction; what was decided stays. */
    @Test
    void decisionsAreKeptWithWhatTheyRestedOn() {
        long train = train("2B51");
        asManager(() -> decisions.decide(train, Decision.Occasion.ASKED));
        int before = decisions.of(train).size();
        asManager(() -> decisions.decide(train, Decision.Occasion.ASKED));
        assertThat(decisions.of(train)).as("the same is not kept twice").hasSize(before);
        Decision allowed = decisions.latest(train).orElseThrow();
        assertThat(allowed.permit().answer()).isEqualTo(Answer.ALLOWED);
        assertThat(allowed.kept().again().lines()).isEqualTo(allowed.permit().lines());

        know("D-04", Kind.SUSPENDED, told("2B51").lines().get(0).holding().subject());
        asManager(() -> decisions.decide(train, Decision.Occasion.ASKED));

        Decision refused = decisions.latest(train).orElseThrow();
        assertThat(refused.permit().answer()).isEqualTo(Answer.REFUSED);
        assertThat(refused.kept().again().answer()).isEqualTo(Answer.REFUSED);
        assertThat(decisions.of(train)).contains(allowed);
        asManager(() -> decisions.decide(train, Decision.Occasion.BOOKING_ON));
        assertThat(decisions.of(train)).as("booking on is always kept").hasSize(before + 2);
    }

    @Test
    void everyCrewOfTheDemonstrationWasDecidedOnWhenItWasCrewed() {
        for (String code : List.of("1X01", "2K07", "4F12", "6U20", "0L36", "1A40", "2B51", "8S60")) {
            Decision decision = decisions.latest(train(code)).orElseThrow();
            assertThat(decision.permit().answer()).as(code).isEqualTo(told(code).answer());
        }
    }

    private void asDriver(String staffNumber, Runnable work) {
        Acting.as(person(staffNumber), "DRIVER", work);
    }

    /** A driver says from the page that they do not sign a stretch: decided anew, the manager sees it, the entries stay. */
    @Test
    void whoDoesNotSignAStretchSaysSoAndTheManagerIsTold() throws Exception {
        long train = train("2K07");
        Subject road = told("2K07").lines().get(0).holding().subject();
        mvc.perform(post("/permits/{id}/decline", train)
                        .param("subject", road.kind() + ":" + road.code())
                        .with(user("m").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(status().isForbidden());
        asDriver("D-02", () -> decisions.decline(train, road, "not since the new signals"));
        assertThat(decisions.latest(train).orElseThrow().occasion()).isEqualTo(Decision.Occasion.DECLINED);
        assertThat(told("2K07").lines().get(0).why()).isEqualTo("declined");
        assertThat(holding("D-02", road.code()).counts()).isTrue();
        mvc.perform(get("/").with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("/permits/" + train + "\"")));
        mvc.perform(get("/permits/{id}", train).with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("They say that they do not sign it")))
                .andExpect(content().string(containsString("when declined")));
        mvc.perform(get("/trains/{id}", train).with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("Not by the records.")));
    }

    @Test
    void nobodyDeclinesForAnother() {
        Subject road = told("2K07").lines().get(0).holding().subject();
        assertThatThrownBy(() -> asDriver("D-01", () -> decisions.decline(train("2K07"), road, "")))
                .isInstanceOf(ActRefusedException.class)
                .hasMessageContaining("not-of-crew");
    }

    private Holding then(String staffNumber, String section, LocalDate day) {
        return knowledge.holding(person(staffNumber), new Subject(Subject.Kind.SECTION, section), day, clock.instant());
    }

    /** A split carries what is held to both parts, with the same last good day; the crew is decided on by the new sections. */
    @Test
    void splitSectionIsHeldInBothPartsWithItsDates() {
        Holding before = holding("D-01", "GC-DN");
        Holding third = holding("D-03", "GC-DN");
        assertThat(before.counts()).isTrue();
        asManager(() -> {
            surgery.split(
                    "GC-DN",
                    2_000,
                    new SectionSurgery.Named("GW-DN", "Grindlewick to the weir"),
                    new SectionSurgery.Named("WC-DN", "The weir to Corbel Top"));
            return true;
        });
        for (String part : List.of("GW-DN", "WC-DN")) {
            assertThat(holding("D-01", part).lastGoodDay()).isEqualTo(before.lastGoodDay());
            assertThat(holding("D-01", part).state()).isEqualTo(before.state());
            assertThat(holding("D-03", part).lastGoodDay()).isEqualTo(third.lastGoodDay());
        }
        assertThat(holding("D-01", "GC-DN").state()).isEqualTo(Holding.State.CLOSED);
        assertThatThrownBy(() -> asManager(() -> {
                    surgery.split("MQ-DN", 1, new SectionSurgery.Named("A", "a"), new SectionSurgery.Named("B", "b"));
                    return true;
                }))
                .hasMessage("split-place");
    }

    /** A merge is held by who holds both, from the older dates (practice of the trade, computed). */
    @Test
    void mergedSectionsAreHeldByWhoHoldsBothFromTheOlderDates() {
        Holding gc = holding("D-05", "GC-DN");
        Holding cm = holding("D-05", "CM-DN");
        assertThat(gc.counts() && cm.counts()).isTrue();
        LocalDate older = gc.lasts().orElseThrow().isBefore(cm.lasts().orElseThrow())
                ? gc.lasts().orElseThrow()
                : cm.lasts().orElseThrow();
        asManager(() -> {
            surgery.merge("GC-DN", "CM-DN", new SectionSurgery.Named("GM-DN", "Grindlewick to Merrowvale"));
            return true;
        });
        assertThat(holding("D-05", "GM-DN").lastGoodDay()).isEqualTo(older);
        assertThat(then("D-05", "GM-DN", older).counts()).isTrue();
        assertThat(then("D-05", "GM-DN", older.plusDays(1)).state()).isEqualTo(Holding.State.LAPSED);
        assertThat(holding("D-01", "GM-DN").counts())
                .as("he holds one of them only")
                .isFalse();
        assertThat(sections.find("GM-DN").orElseThrow().band()).isEqualTo(org.crosshead.routeknowledge.Band.HARD);
        assertThatThrownBy(() -> asManager(() -> {
                    surgery.merge("ZU-DN", "MQ-DN", new SectionSurgery.Named("ZQ", "too far"));
                    return true;
                }))
                .hasMessage("merge-apart");
    }

    @Test
    void sectionIsEnteredByAForm() throws Exception {
        mvc.perform(get("/sections/new").with(csrf()).with(user("i").roles("INSPECTOR")))
                .andExpect(status().isOk());
        mvc.perform(get("/sections/GC-DN/edit").with(csrf()).with(user("i").roles("INSPECTOR")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("22m 50ch")));
        mvc.perform(post("/sections")
                        .param("code", "QZ-UP")
                        .param("title", "Quillhaven to Merrowvale")
                        .param("route", "MAIN")
                        .param("from", "38m 60ch")
                        .param("to", "60m 0ch")
                        .param("direction", "FALLING")
                        .param("band", "USUAL")
                        .param("hard", "Fog in the marsh.")
                        .param("teacher", "D-02")
                        .with(user("i").roles("INSPECTOR"))
                        .with(csrf()))
                .andExpect(flash().attribute("done", "competence.section.saved"));
        assertThat(sections.find("QZ-UP").orElseThrow().isOpen(today())).isFalse();
        mvc.perform(post("/sections")
                        .param("code", "XX")
                        .param("title", "Nowhere")
                        .param("route", "MAIN")
                        .param("from", "far away")
                        .param("to", "60m 0ch")
                        .param("direction", "FALLING")
                        .param("band", "USUAL")
                        .param("hard", "x")
                        .with(user("i").roles("INSPECTOR"))
                        .with(csrf()))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("far away")))
                .andExpect(content().string(containsString("Write positions as the route is measured")));
        mvc.perform(get("/sections/new").with(user("m").roles("MANAGER"))).andExpect(status().isForbidden());
    }

    /** Put forward by one, approved by another; laxer than the law or for days gone by it is refused. */
    @Test
    void policyIsPutForwardAndApprovedBySomebodyElse() throws Exception {
        mvc.perform(proposal("12", "36").with(user("Hilde").roles("MANAGER")).with(csrf()))
                .andExpect(flash().attribute("done", "competence.policy.proposed"));
        mvc.perform(get("/knowledge-policy").with(csrf()).with(user("Hilde").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Put forward by Hilde; not approved")));
        mvc.perform(post("/knowledge-policy/2/approve")
                        .with(user("Hilde").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.policy-approved-by-owner"));
        mvc.perform(post("/knowledge-policy/2/approve")
                        .with(user("Finch").roles("ASSESSOR"))
                        .with(csrf()))
                .andExpect(flash().attribute("done", "competence.policy.approved-done"));
        mvc.perform(post("/knowledge-policy/2/approve")
                        .with(user("Finch").roles("ASSESSOR"))
                        .with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.policy-gone"));
        Permit told = told("2B51");
        assertThat(told.policyVersion()).isEqualTo(2);
        assertThat(told.lines().get(0).holding().subject()).isEqualTo(Subject.LICENCE);
        assertThat(told.answer()).as("nobody's licence is entered").isEqualTo(Answer.REFUSED);
        mvc.perform(get("/permits/{id}", train("2B51"))
                        .with(csrf())
                        .with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("Licence to drive")));
        mvc.perform(get("/permits/{id}", train("2B51"))
                        .with(csrf())
                        .with(user("a").roles("ASSESSOR")))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Licence to drive"))));
        mvc.perform(proposal("18", "36").with(user("Hilde").roles("MANAGER")).with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.policy-longer-than-law"));
        mvc.perform(proposal("twelve", "36")
                        .with(user("Hilde").roles("MANAGER"))
                        .with(csrf()))
                .andExpect(flash().attribute("refused", "competence.refused.policy-number"));
        mvc.perform(proposal("12", "36").with(user("d").roles("DRIVER")).with(csrf()))
                .andExpect(status().isForbidden());
    }

    private org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder proposal(
            String usual, String assessment) {
        return post("/knowledge-policy")
                .param("validFrom", today().toString())
                .param("hard", "6")
                .param("usual", usual)
                .param("easy", "12")
                .param("classes", "12")
                .param("assessment", assessment)
                .param("warn", "60")
                .param("licence", "yes")
                .param("medical", "yes")
                .param("turn", "12")
                .param("rest", "12")
                .param("pause", "4")
                .param("week", "72")
                .param("turns", "13")
                .param("anew", "12")
                .param("proving", "yes")
                .param("holders", "2")
                .param("regime", "MAIN_LINE");
    }

    @Test
    void closedSectionIsReferredAndOneThatIsNotLaidDownToo() {
        asManager(() -> {
            sections.close("UH", today());
            return true;
        });
        assertThat(told("2B51").answer()).isEqualTo(Answer.REFERRED);
    }

    /** Only a confirmed turn counts: then what was conducted keeps nothing alive, and the rest is worked. */
    @Test
    void confirmedTurnIsEnteredOnceForTheSectionsActuallyRun() {
        int made = asManager(() -> permits.confirm(train("1X01"), false));
        assertThat(made).isEqualTo(8);
        assertThat(asManager(() -> permits.confirm(train("1X01"), false))).isZero();
        assertThat(holding("D-01", "GC-DN").lastWorked()).isEqualTo(today());
        assertThat(holding("D-01", "CM-DN").state()).isEqualTo(Holding.State.LAPSED);
        assertThat(knowledge.events(person("I-01"))).anyMatch(event -> event.kind() == CompetenceEvent.Kind.CONDUCTED);
    }

    @Test
    void pagesSayItToThoseWhomItConcerns() throws Exception {
        mvc.perform(get("/permits/{id}", train("4F12"))
                        .with(csrf())
                        .with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Not by the records.")))
                .andExpect(content().string(containsString("could conduct: Josephine Marlpit (I-01)")));
        mvc.perform(get("/permits/{id}", train("4F12")).with(user("d").roles("DRIVER")))
                .andExpect(status().isForbidden());
        mvc.perform(get("/knowledge").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Corwin Latch")));
        mvc.perform(get("/knowledge").with(user("d").roles("DRIVER"))).andExpect(status().isForbidden());
        mvc.perform(get("/knowledge")
                        .param("depot", "Quillhaven")
                        .param("post", "DRIVER")
                        .with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("Bettine Quarrel")))
                .andExpect(content().string(not(containsString("Corwin Latch"))))
                .andExpect(content().string(not(containsString(">UH<"))));
        mvc.perform(get("/knowledge.csv")
                        .param("depot", "Umberlow")
                        .with(user("m").roles("MANAGER")))
                .andExpect(content().string(containsString("D-04,Dorrit Halfpenny,Umberlow,SECTION,UH,HELD")))
                .andExpect(content().string(not(containsString("D-02"))));
        mvc.perform(get("/knowledge/D-03").with(csrf()).with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("lapsed")));
        mvc.perform(get("/knowledge/D-03").with(user("d").roles("DRIVER"))).andExpect(status().isForbidden());
        mvc.perform(get("/knowledge/nobody").with(user("m").roles("MANAGER"))).andExpect(status().isNotFound());
        mvc.perform(get("/sections").with(user("d").roles("DRIVER"))).andExpect(status().isOk());
        mvc.perform(get("/knowledge").param("day", "not a day").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk());
    }

    /** What lapses at the manager's own depot; Corwin Latch works from another. */
    @Test
    void startPageTellsAManagerOfTheirDepot() {
        CurrentActor.Actor manager = new CurrentActor.Actor(
                1L, people.byStaffNumber("M-01").orElseThrow().id(), "Kester Underbridge", Set.of("MANAGER"));
        StartPageSection due = startPage.stream()
                .filter(section -> section.titleCode().equals("competence.start.due"))
                .findFirst()
                .orElseThrow();
        List<String> said =
                due.links(manager).stream().map(StartPageSection.Link::text).toList();
        assertThat(said).contains("Ambrose Tinder").doesNotContain("Corwin Latch");
        assertThat(said).anyMatch(text -> text.startsWith("Only people of Quillhaven are listed"));
        CurrentActor.Actor nobody = new CurrentActor.Actor(1L, null, "service", Set.of("MANAGER"));
        assertThat(due.links(nobody))
                .extracting(StartPageSection.Link::text)
                .contains("Ambrose Tinder", "Corwin Latch");
    }

    /** Somebody whose post has ended takes no train, whatever they know; a train that they are booked on already is decided on anew. */
    @Test
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    void whoNoLongerHoldsThePostIsRefused() {
        Person before = people.byStaffNumber("D-05").orElseThrow();
        long excursion = train("1A40");
        assertThat(permits.of(excursion).bars()).isEmpty();
        ServiceJob.run(
                Set.of("MANAGER"),
                () -> people.enter(new PersonDraft(
                        "D-05",
                        before.name(),
                        List.of(new PostHeld(
                                Post.DRIVER, "Quillhaven", today().minusDays(400), today().minusDays(1))))));
        assertThat(permits.of(excursion).bars())
                .containsExactly(new Permit.Bar(before.id(), "post", List.of(0.0, 0.0)));
        assertThat(decisions.latest(excursion).orElseThrow().permit().answer()).isEqualTo(Answer.REFUSED);
        ServiceJob.run(Set.of("MANAGER"), () -> people.enter(new PersonDraft("D-05", before.name(), before.posts())));
        assertThat(decisions.latest(excursion).orElseThrow().permit().bars()).isEmpty();
    }

    /** Who has left is named to nobody as a conductor driver, and holds no road for the railway. */
    @Test
    void whoHasLeftConductsNobody() {
        assertThat(lacking().conductors()).containsExactly(person("D-05"), person("I-01"));
        Person left = people.byStaffNumber("D-05").orElseThrow();
        asManager(() -> people.enter(new PersonDraft(
                "D-05",
                left.name(),
                List.of(new PostHeld(Post.DRIVER, today().minusDays(400), today().minusDays(1))))));
        assertThat(lacking().conductors()).containsExactly(person("I-01"));
    }

    private Permit.Line lacking() {
        return permits.of(train("4F12")).lines().stream()
                .filter(line -> line.answer() == Answer.REFUSED)
                .findFirst()
                .orElseThrow();
    }

    /** Whoever entered something is not asked to approve it. */
    @Test
    void startPageTellsWhatWaitsForASecondPerson() {
        StartPageSection approve = startPage.stream()
                .filter(section -> section.titleCode().equals("competence.start.approve"))
                .findFirst()
                .orElseThrow();
        String by = sections.find("UH").orElseThrow().enteredBy();
        assertThat(approve.links(new CurrentActor.Actor(1L, null, "Another", Set.of("MANAGER"))))
                .extracting(StartPageSection.Link::text)
                .contains("UH Umberlow Junction to Heatherlode", "A8");
        assertThat(approve.links(new CurrentActor.Actor(1L, null, by, Set.of("MANAGER"))))
                .extracting(StartPageSection.Link::text)
                .doesNotContain("UH Umberlow Junction to Heatherlode", "A8");
        assertThat(approve.isFor(new CurrentActor.Actor(1L, null, "A", Set.of("DRIVER"))))
                .isFalse();
    }

    @Test
    void startPageTellsTheManagerWhoMayNotGo() throws Exception {
        mvc.perform(get("/").with(user("m").roles("MANAGER")))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Crews to look at")))
                .andExpect(content().string(containsString("/permits/" + train("4F12") + "\"")))
                .andExpect(content().string(containsString("CM-DN lapsed")));
    }

    @Test
    void whatCannotBeEnteredIsRefusedInWords() throws Exception {
        String[][] wrong = {
            {"WORKED", "SECTION:UH", today().toString(), "not-offered"},
            {"AUTHORISED", "SECTION:NONE", today().toString(), "not-offered"},
            {"AUTHORISED", "SECTION:CM-DN", "yesterday", "no-day"},
            {"AUTHORISED", "SECTION:CM-DN", today().toString(), "not-assessed"},
            {"SUSPENDED", "SECTION:CM-DN", today().plusDays(1).toString(), "in-the-future"},
            {"SUSPENDED", "SECTION:CM-DN", today().toString(), "reason-missing"}
        };
        for (String[] one : wrong) {
            mvc.perform(post("/knowledge/D-03")
                            .param("kind", one[0])
                            .param("subject", one[1])
                            .param("day", one[2])
                            .param("note", "")
                            .with(user("m").roles("MANAGER"))
                            .with(csrf()))
                    .andExpect(flash().attribute("refused", "competence.refused." + one[3]));
        }
        mvc.perform(post("/sections/UH/approve")
                        .param("version", "1")
                        .with(user("d").roles("DRIVER"))
                        .with(csrf()))
                .andExpect(status().isForbidden());
    }
}
