package org.crosshead.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.crosshead.briefing.Preparations.Standing;
import org.crosshead.platform.NotFoundException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.mockito.stubbing.Answer;

class PreparationsTests {

    private static final Duration LONG = Duration.ofSeconds(20);

    private final Briefings briefings = mock();
    private final Preparations preparations = new Preparations(briefings);
    private final CountDownLatch planning = new CountDownLatch(1);
    private final CountDownLatch goOn = new CountDownLatch(1);

    @AfterEach
    void stop() {
        goOn.countDown();
        preparations.stop();
    }

    private Answer<Long> held(long briefingId) {
        return call -> {
            call.<Progress>getArgument(1).begins(Progress.Part.PLANS);
            planning.countDown();
            assertThat(goOn.await(20, TimeUnit.SECONDS)).isTrue();
            return briefingId;
        };
    }

    @Test
    void tellsHowFarItHasComeAndGoesOnWithoutAnybodyLooking() throws InterruptedException {
        when(briefings.prepare(eq(7L), any())).thenAnswer(held(70));
        preparations.begin(7);
        assertThat(planning.await(20, TimeUnit.SECONDS)).isTrue();

        assertThat(preparations.await(7, Duration.ZERO)).contains(new Standing(Progress.Part.PLANS, null, null));
        goOn.countDown();

        assertThat(preparations.await(7, LONG)).map(Standing::briefingId).contains(70L);
        assertThat(preparations.await(7, LONG)).isEmpty();
    }

    @Test
    void trainWhoseBriefingIsInTheMakingIsNotBegunTwice() throws InterruptedException {
        when(briefings.prepare(eq(7L), any())).thenAnswer(held(70));
        preparations.begin(7);
        assertThat(planning.await(20, TimeUnit.SECONDS)).isTrue();

        preparations.begin(7);
        goOn.countDown();

        assertThat(preparations.await(7, LONG)).map(Standing::briefingId).contains(70L);
        verify(briefings, times(1)).prepare(eq(7L), any());
    }

    @Test
    void thirdWaitsForOneOfTheTwo() throws InterruptedException {
        when(briefings.prepare(eq(7L), any())).thenAnswer(held(70));
        when(briefings.prepare(eq(8L), any())).thenAnswer(held(80));
        when(briefings.prepare(eq(9L), any())).thenReturn(90L);
        preparations.begin(7);
        preparations.begin(8);
        assertThat(planning.await(20, TimeUnit.SECONDS)).isTrue();
        preparations.begin(9);

        assertThat(preparations.await(9, Duration.ofMillis(50)))
                .map(Standing::part)
                .contains(Progress.Part.WAITS);
        goOn.countDown();
        assertThat(preparations.await(9, LONG)).map(Standing::briefingId).contains(90L);
    }

    @Test
    void whatStandsInTheWayIsTold() {
        when(briefings.prepare(eq(1L), any())).thenThrow(new BriefingRefusedException("train-cancelled"));
        when(briefings.prepare(eq(2L), any())).thenThrow(new NotFoundException("train", 2));
        when(briefings.prepare(eq(3L), any())).thenThrow(new IllegalStateException("unforeseen"));
        preparations.begin(1);
        preparations.begin(2);
        preparations.begin(3);

        assertThat(refusal(1)).contains("train-cancelled");
        assertThat(refusal(2)).contains("train-gone");
        assertThat(refusal(3)).contains("failed");
        assertThat(preparations.await(4, Duration.ZERO)).isEmpty();
    }

    private Optional<String> refusal(long trainId) {
        return preparations.await(trainId, LONG).map(Standing::refused);
    }
}
