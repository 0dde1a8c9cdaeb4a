package org.crosshead.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection.Link;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.context.support.ResourceBundleMessageSource;

class TodaysTrainsTests {

    private static final LocalDate TODAY = LocalDate.of(2030, 5, 7);

    /** Late on the day before by the clock of the world, but already the next day in the zone of this railway. */
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2030-05-06T23:30:00Z"), ZoneId.of("UTC"));

    private static final Actor INSPECTOR = new Actor(1L, 2L, "Anna", Set.of("INSPECTOR"));

    private final Trains trains = mock(Trains.class);
    private final OwnTrains ownTrains = mock(OwnTrains.class);
    private final ResourceBundleMessageSource words = new ResourceBundleMessageSource();

    @BeforeEach
    void words() {
        words.setBasename("messages/platform");
        words.setFallbackToSystemLocale(false);
        LocaleContextHolder.setLocale(Locale.UK);
    }

    @AfterEach
    void forgetLocale() {
        LocaleContextHolder.resetLocaleContext();
    }

    @Test
    void listsTheTrainsOfTheRailwaysOwnDay() {
        TrainSummary express = train(7, "2C14", false);
        TrainSummary goods = train(8, "6K01", true);
        when(trains.between(TODAY, TODAY)).thenReturn(List.of(express, goods));
        when(ownTrains.visible(any())).thenAnswer(call -> call.getArgument(0));

        assertThat(section().links(INSPECTOR))
                .containsExactly(
                        new Link("/trains/7", "2C14 Up the bank", "Marram 10:05 to Lowmere 10:31"),
                        new Link("/trains/8", "6K01 Up the bank", "cancelled; was Marram 10:05 to Lowmere 10:31"));
    }

    @Test
    void leavesOutWhatTheCrewDoesNotWork() {
        when(trains.between(TODAY, TODAY)).thenReturn(List.of(train(7, "2C14", false)));
        when(ownTrains.visible(any())).thenReturn(List.of());

        assertThat(section().links(INSPECTOR)).isEmpty();
    }

    @Test
    void isNotForALogInWithoutPost() {
        assertThat(section().isFor(new Actor("nobody"))).isFalse();
        assertThat(section().isFor(INSPECTOR)).isTrue();
    }

    private TodaysTrains section() {
        return new TodaysTrains(trains, ownTrains, words, CLOCK, ZoneId.of("Europe/London"));
    }

    private static TrainSummary train(long id, String code, boolean cancelled) {
        return new TrainSummary(
                id,
                code,
                TODAY,
                "Up the bank",
                cancelled,
                "Marram",
                Instant.parse("2030-05-07T09:05:00Z"),
                "Lowmere",
                Instant.parse("2030-05-07T09:31:00Z"),
                "SET",
                List.of("4172"),
                List.of("D-01"));
    }
}
