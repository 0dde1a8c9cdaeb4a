package org.crosshead.briefing.web;

import java.util.List;
import java.util.Locale;
import org.crosshead.briefing.Policies;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: figures of the railway that wait for a second person. */
@Component
@Order(7)
class FiguresToApprove implements StartPageSection {

    private final Policies policies;
    private final MessageSource messages;

    FiguresToApprove(Policies policies, MessageSource messages) {
        this.policies = policies;
        this.messages = messages;
    }

    @Override
    public String titleCode() {
        return "briefing.start.figures";
    }

    @Override
    public String emptyCode() {
        return "briefing.start.figures-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("MANAGER") || actor.holds("ASSESSOR") || actor.holds("INSPECTOR");
    }

    @Override
    public List<Link> links(Actor actor) {
        return policies.proposed().stream()
                .filter(one -> !one.enteredBy().equals(actor.name()))
                .map(one -> new Link(
                        "/policy-figures",
                        one.figure().key(),
                        messages.getMessage(
                                "briefing.start.figures.by",
                                new Object[] {one.enteredBy(), one.figure().validFrom()},
                                Locale.UK)))
                .toList();
    }
}
