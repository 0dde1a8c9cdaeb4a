package org.crosshead.competence.web;

import java.util.List;
import java.util.Locale;
import org.crosshead.competence.ConductorDrivers;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.crosshead.working.Trains;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: the trains on which whoever looks is asked to conduct. */
@Component
@Order(2)
class ConductingAsked implements StartPageSection {

    private final ConductorDrivers conductors;
    private final Trains trains;
    private final MessageSource messages;

    ConductingAsked(ConductorDrivers conductors, Trains trains, MessageSource messages) {
        this.conductors = conductors;
        this.trains = trains;
        this.messages = messages;
    }

    @Override
    public String titleCode() {
        return "competence.start.conducting";
    }

    @Override
    public String emptyCode() {
        return "competence.start.conducting-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("DRIVER") || actor.holds("INSPECTOR");
    }

    @Override
    public List<Link> links(Actor actor) {
        String said = messages.getMessage("competence.start.conducting.asked", null, Locale.UK);
        return conductors.own().stream()
                .flatMap(asked -> trains.find(asked.trainId()).stream())
                .filter(train -> !train.cancelled())
                .map(train -> new Link(
                        "/permits/" + train.id(),
                        train.content().code() + " " + train.content().day(),
                        said))
                .toList();
    }
}
