package org.crosshead.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.util.Set;
import org.crosshead.Acting;
import org.crosshead.platform.Origin;
import org.crosshead.platform.ServiceJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.transaction.annotation.Transactional;

/** The railway enters its own figures; what a figure was stays known. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:policies;DB_CLOSE_DELAY=-1")
@WithMockUser(roles = "INSPECTOR")
@Transactional
class PoliciesTests {

    private static final LocalDate FROM = LocalDate.of(2030, 5, 6);

    @Autowired
    private Policies policies;

    @Autowired
    private Policy policy;

    private static PolicyDraft draft(String key, double value, LocalDate from) {
        return new PolicyDraft(key, value, Origin.ESTIMATED, "own rule", "Traction inspector", from);
    }

    /** Nobody lays down a figure alone: it holds once a second person has approved it; practice of the trade, from memory. */
    @Test
    void figureHoldsOnceASecondPersonHasApprovedIt() {
        Acting.as(7L, "INSPECTOR", () -> policies.enter(draft(Policy.BRAKING_MARGIN, 1.25, FROM)));

        assertThat(policy.on(FROM))
                .extractingByKey(Policy.BRAKING_MARGIN)
                .satisfies(figure -> assertThat(figure.value()).isEqualTo(1.1));
        assertThat(policies.proposed()).singleElement().satisfies(one -> {
            assertThat(one.figure().value()).isEqualTo(1.25);
            assertThat(one.now()).isNotNull();
        });
        Acting.as(
                7L,
                "INSPECTOR",
                () -> assertThatExceptionOfType(PolicyRefusedException.class)
                        .isThrownBy(() -> policies.approve(Policy.BRAKING_MARGIN, 2))
                        .extracting(PolicyRefusedException::code)
                        .isEqualTo("own"));
        Acting.as(
                8L,
                "DRIVER",
                () -> assertThatExceptionOfType(AccessDeniedException.class)
                        .isThrownBy(() -> policies.approve(Policy.BRAKING_MARGIN, 2)));
        ServiceJob.run(Set.of("MANAGER"), () -> {
            policies.approve(Policy.BRAKING_MARGIN, 2);
            assertThatExceptionOfType(PolicyRefusedException.class)
                    .isThrownBy(() -> policies.approve(Policy.BRAKING_MARGIN, 2))
                    .extracting(PolicyRefusedException::code)
                    .isEqualTo("gone");
        });
        assertThat(policies.proposed()).isEmpty();
        assertThat(policy.on(FROM))
                .extractingByKey(Policy.BRAKING_MARGIN)
                .extracting(Policy.PolicyFigure::value)
                .isEqualTo(1.25);
    }

    private void enterAndApprove(PolicyDraft draft) {
        policies.enter(draft);
        ServiceJob.run(
                Set.of("MANAGER"),
                () -> policies.proposed()
                        .forEach(one -> policies.approve(
                                one.figure().key(), one.figure().version())));
    }

    @Test
    void newVersionHoldsFromItsDayOn() {
        enterAndApprove(draft(Policy.BRAKING_MARGIN, 1.25, FROM));

        assertThat(policy.on(FROM).get(Policy.BRAKING_MARGIN)).satisfies(figure -> {
            assertThat(figure.value()).isEqualTo(1.25);
            assertThat(figure.version()).isEqualTo(2);
        });
        assertThat(policy.on(FROM.minusDays(1)))
                .extractingByKey(Policy.BRAKING_MARGIN)
                .extracting(Policy.PolicyFigure::value)
                .isEqualTo(1.1);
    }

    @Test
    void sameFileTwiceChangesNothing() {
        policies.enter(draft("hand-brakes.vehicles-to.10", 2, FROM));
        enterAndApprove(draft("hand-brakes.vehicles-to.10", 2, FROM));
        ServiceJob.run(Set.of("INSPECTOR"), () -> policies.enter(draft("hand-brakes.vehicles-to.10", 2, FROM)));
        assertThat(policies.proposed()).isEmpty();

        assertThat(policy.on(FROM))
                .extractingByKey("hand-brakes.vehicles-to.10")
                .extracting(Policy.PolicyFigure::version)
                .isEqualTo(1);
    }

    @Test
    void earlierDayThanANewerVersionIsRefused() {
        policies.enter(draft(Policy.REACTION_TIME, 5, FROM));

        refused("later-there", draft(Policy.REACTION_TIME, 6, FROM.minusDays(1)));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            braking.margin-factor,                    0.99, value
            braking.margin-factor,                    3.1,  value
            braking.tramway-table,                    1.5,  whole
            braking.tramway-table,                    3,    value
            hand-brakes.vehicles-to.10,               2.5,  whole
            hand-brakes.vehicles-to.0,                2,    unknown
            pinned-wagons.per-cent-from-one-in.50,    101,  value
            pinned-wagons.per-cent-from-one-in.4,     10,   unknown
            hand-brakes.per-cent-from-one-in.steep,   10,   unknown
            braking.luck,                             1,    unknown
            """)
    void refusesWhatCannotBeMeant(String key, double value, String code) {
        refused(code, draft(key, value, FROM));
    }

    @Test
    @WithMockUser(roles = "DRIVER")
    void driverLaysNothingDown() {
        assertThatExceptionOfType(AccessDeniedException.class)
                .isThrownBy(() -> policies.enter(draft(Policy.BRAKING_MARGIN, 1.25, FROM)));
    }

    private void refused(String code, PolicyDraft draft) {
        assertThatExceptionOfType(PolicyRefusedException.class)
                .isThrownBy(() -> policies.enter(draft))
                .satisfies(refused -> assertThat(refused.code()).isEqualTo(code));
    }
}
