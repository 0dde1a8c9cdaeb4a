package org.crosshead.briefing.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.crosshead.briefing.Briefings;
import org.crosshead.briefing.IssuedBriefing;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: for crew the briefings of their trains, for the inspector those that want something done. */
@Component
@Order(0)
class BriefingsToRead implements StartPageSection {

    private final Briefings briefings;
    private final Trains trains;
    private final OwnTrains ownTrains;
    private final MessageSource messages;
    private final ZoneId zone;
    private final Clock clock;

    BriefingsToRead(
            Briefings briefings, Trains trains, OwnTrains ownTrains, MessageSource messages, ZoneId zone, Clock clock) {
        this.briefings = briefings;
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.messages = messages;
        this.zone = zone;
        this.clock = clock;
    }

    @Override
    public String titleCode() {
        return "briefing.start.title";
    }

    @Override
    public String emptyCode() {
        return "briefing.start.empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("DRIVER") || actor.holds("FIREMAN") || actor.holds("INSPECTOR");
    }

    @Override
    public List<Link> links(Actor actor) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        boolean crew = !ownTrains.seesAll();
        List<Link> links = new ArrayList<>();
        for (TrainSummary train : ownTrains.visible(trains.between(today, today.plusDays(1)))) {
            if (!train.cancelled()) {
                briefings
                        .latest(train.id())
                        .ifPresentOrElse(
                                latest -> add(links, train, briefings.show(latest.id()), crew),
                                () -> addNone(links, train, crew));
            }
        }
        return links;
    }

    private void add(List<Link> links, TrainSummary train, IssuedBriefing briefing, boolean crew) {
        String path = "/briefings/" + briefing.id() + (crew ? "" : "/standing");
        Integer number = Objects.requireNonNull(briefing.issueNumber());
        if (!briefing.outOfDate().isEmpty()) {
            links.add(new Link(path, name(train), say("briefing.start.out-of-date", number)));
        } else if (crew) {
            String code = briefing.mayAcknowledge() ? "briefing.start.to-sign" : "briefing.start.signed";
            links.add(new Link(path, name(train), say(code, number)));
        } else if (!briefing.notYetRead().isEmpty()) {
            links.add(new Link(
                    path, name(train), say("briefing.start.not-read", String.join(", ", briefing.notYetRead()))));
        }
    }

    private void addNone(List<Link> links, TrainSummary train, boolean crew) {
        String path = crew ? "/trains/" + train.id() : "/briefings?train=" + train.id();
        links.add(new Link(path, name(train), say("briefing.start.none")));
    }

    private static String name(TrainSummary train) {
        return train.code() + " " + train.title();
    }

    private String say(String code, Object... arguments) {
        return messages.getMessage(code, arguments, Locale.UK);
    }
}
