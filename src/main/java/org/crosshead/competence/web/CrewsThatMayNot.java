package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.crosshead.competence.Decisions;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.competence.Permits;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.crosshead.working.TrainSummary;
import org.crosshead.working.Trains;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: for the manager and the inspector the trains of today and tomorrow whose crew may not simply take them. */
@Component
@Order(1)
class CrewsThatMayNot implements StartPageSection {

    private final Permits permits;
    private final Decisions decisions;
    private final Trains trains;
    private final MessageSource messages;
    private final Clock clock;
    private final ZoneId zone;

    CrewsThatMayNot(
            Permits permits, Decisions decisions, Trains trains, MessageSource messages, Clock clock, ZoneId zone) {
        this.decisions = decisions;
        this.permits = permits;
        this.trains = trains;
        this.messages = messages;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public String titleCode() {
        return "competence.start.crews";
    }

    @Override
    public String emptyCode() {
        return "competence.start.crews-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("MANAGER") || actor.holds("INSPECTOR");
    }

    /** What was decided last; decisions are made anew when something changes. */
    private Answer answer(long trainId) {
        return decisions
                .latest(trainId)
                .map(decision -> decision.permit().answer())
                .orElseGet(() -> permits.of(trainId).answer());
    }

    @Override
    public List<Link> links(Actor actor) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        List<Link> links = new ArrayList<>();
        for (TrainSummary train : trains.between(today, today.plusDays(1))) {
            Answer answer = train.cancelled() ? Answer.ALLOWED : answer(train.id());
            if (answer != Answer.ALLOWED) {
                links.add(new Link(
                        "/permits/" + train.id(),
                        train.code() + " " + train.title(),
                        messages.getMessage("competence.answer." + answer, null, Locale.UK)));
            }
        }
        return links;
    }
}
