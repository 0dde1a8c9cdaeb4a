package org.crosshead.competence.web;

import java.util.List;
import java.util.Locale;
import org.crosshead.competence.refresh.Proposal;
import org.crosshead.competence.refresh.RefreshPlans;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: turns that are proposed to whoever looks, and not answered yet. */
@Component
@Order(3)
class ProposedTurns implements StartPageSection {

    private final RefreshPlans plans;
    private final MessageSource messages;

    ProposedTurns(RefreshPlans plans, MessageSource messages) {
        this.plans = plans;
        this.messages = messages;
    }

    @Override
    public String titleCode() {
        return "competence.start.proposed";
    }

    @Override
    public String emptyCode() {
        return "competence.start.proposed-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("DRIVER") || actor.holds("FIREMAN");
    }

    @Override
    public List<Link> links(Actor actor) {
        return plans.own().stream()
                .filter(one -> one.state() == Proposal.State.PROPOSED)
                .map(one -> new Link(
                        "/refresh",
                        one.trainCode() + " " + one.day(),
                        messages.getMessage("competence.start.proposed-for", new Object[] {one.subjects()}, Locale.UK)))
                .toList();
    }
}
