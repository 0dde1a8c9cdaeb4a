package org.crosshead.working;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** The trains of today on the start page: crew see those that they work, everybody else all. */
@Component
@Order(10)
class TodaysTrains implements StartPageSection {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    private final Trains trains;
    private final OwnTrains ownTrains;
    private final MessageSource words;
    private final Clock clock;
    private final ZoneId zone;

    TodaysTrains(Trains trains, OwnTrains ownTrains, MessageSource words, Clock clock, ZoneId zone) {
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.words = words;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public String titleCode() {
        return "platform.start.trains";
    }

    @Override
    public String emptyCode() {
        return "platform.start.trains.empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return !actor.posts().isEmpty();
    }

    @Override
    public List<Link> links(Actor actor) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return ownTrains.visible(trains.between(today, today)).stream()
                .map(this::link)
                .toList();
    }

    private Link link(TrainSummary train) {
        String code = train.cancelled() ? "platform.start.train.cancelled" : "platform.start.train";
        Object[] times = {train.fromPlace(), time(train.departs()), train.toPlace(), time(train.arrives())};
        return new Link(
                "/trains/" + train.id(),
                train.code() + " " + train.title(),
                words.getMessage(code, times, LocaleContextHolder.getLocale()));
    }

    private String time(Instant moment) {
        return TIME.format(moment.atZone(zone));
    }
}
