package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Knowledge;
import org.crosshead.competence.Subject;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: what lapses soon or has lapsed, for a manager of everybody, for crew their own. */
@Component
@Order(2)
class KnowledgeDue implements StartPageSection {

    private final Knowledge knowledge;
    private final People people;
    private final MessageSource messages;
    private final Clock clock;
    private final ZoneId zone;

    KnowledgeDue(Knowledge knowledge, People people, MessageSource messages, Clock clock, ZoneId zone) {
        this.knowledge = knowledge;
        this.people = people;
        this.messages = messages;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public String titleCode() {
        return "competence.start.due";
    }

    @Override
    public String emptyCode() {
        return "competence.start.due-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("MANAGER") || actor.holds("DRIVER") || actor.holds("FIREMAN");
    }

    @Override
    public List<Link> links(Actor actor) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        Map<Subject, Map<Long, Holding>> all =
                knowledge.everybody(knowledge.subjects(), List.of(today)).get(0);
        List<Link> links = new ArrayList<>();
        for (Person person : people.all()) {
            boolean own = Long.valueOf(person.id()).equals(actor.personId());
            String due = all.values().stream()
                    .map(holders -> holders.get(person.id()))
                    .filter(Objects::nonNull)
                    .filter(holding -> holding.state() == Holding.State.DUE || holding.state() == Holding.State.LAPSED)
                    .map(this::said)
                    .collect(Collectors.joining("; "));
            if ((actor.holds("MANAGER") || own) && !due.isEmpty()) {
                links.add(new Link("/knowledge/" + person.staffNumber(), person.name(), due));
            }
        }
        return links;
    }

    private String said(Holding holding) {
        String state = messages.getMessage("competence.state." + holding.state(), null, Locale.UK);
        String until = holding.lasts()
                .map(last -> messages.getMessage("competence.permit.until", new Object[] {last}, Locale.UK))
                .orElse("");
        return (holding.subject().code() + " " + state + " " + until).strip();
    }
}
