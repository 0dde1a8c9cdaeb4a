package org.crosshead.competence.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: what lapses soon or has lapsed, for a manager of everybody at their depot, for crew their own. */
@Component
@Order(2)
class KnowledgeDue implements StartPageSection {

    private static final int SHOWN = 40;

    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final People people;
    private final MessageSource messages;
    private final Clock clock;
    private final ZoneId zone;

    KnowledgeDue(
            Holdings holdings,
            KnowledgePolicies policies,
            People people,
            MessageSource messages,
            Clock clock,
            ZoneId zone) {
        this.holdings = holdings;
        this.policies = policies;
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
        return actor.holds("MANAGER") ? ofEverybody(actor, today) : own(actor, today);
    }

    private List<Link> own(Actor actor, LocalDate today) {
        Long personId = actor.personId();
        return personId == null
                ? List.of()
                : people
                        .find(personId)
                        .flatMap(person -> link(person, holdings.of(personId, today), urgentTo(today)))
                        .stream()
                        .toList();
    }

    /** Of everybody, or of the depots from which whoever looks works and of those of whom no depot is said; what lapses next stands first. */
    private List<Link> ofEverybody(Actor actor, LocalDate today) {
        List<String> depots = Optional.ofNullable(actor.personId()).flatMap(people::find).stream()
                .flatMap(person -> person.depots(today).stream())
                .toList();
        List<Person> meant = people.all().stream()
                .filter(person -> Group.EVERYBODY.includes(person, today))
                .filter(person -> depots.isEmpty() || isOf(person, depots, today))
                .toList();
        Map<Long, List<Holding>> held =
                holdings.of(meant.stream().map(Person::id).toList(), today);
        LocalDate urgentTo = urgentTo(today);
        List<Link> links = meant.stream()
                .sorted(Comparator.comparing(person -> soonest(held.getOrDefault(person.id(), List.of()))))
                .flatMap(person -> link(person, held.getOrDefault(person.id(), List.of()), urgentTo).stream())
                .toList();
        List<Link> shown = new ArrayList<>(links.subList(0, Math.min(SHOWN, links.size())));
        if (links.size() > SHOWN) {
            shown.add(more("competence.start.due-more", links.size() - SHOWN));
        }
        if (!depots.isEmpty()) {
            shown.add(more("competence.start.due-depot", String.join(", ", depots)));
        }
        return shown;
    }

    /** Returns the day on which something that is due lapses next; the end of time where all that is told has lapsed. */
    private static LocalDate soonest(List<Holding> held) {
        return held.stream()
                .filter(holding -> holding.state() == Holding.State.DUE)
                .flatMap(holding -> holding.lasts().stream())
                .min(Comparator.naturalOrder())
                .orElse(LocalDate.MAX);
    }

    private static boolean isOf(Person person, List<String> depots, LocalDate day) {
        List<String> own = person.depots(day);
        return own.isEmpty() || own.stream().anyMatch(depots::contains);
    }

    private Link more(String code, Object arg) {
        return new Link("/knowledge", message(code, arg), "");
    }

    /** Returns the last day of what is urgent by the policy. */
    private LocalDate urgentTo(LocalDate today) {
        return today.plusDays(policies.on(today).upkeep().urgentDays());
    }

    private Optional<Link> link(Person person, List<Holding> holdings, LocalDate urgentTo) {
        String due = holdings.stream()
                .filter(holding -> holding.state() == Holding.State.DUE || holding.state() == Holding.State.LAPSED)
                .map(holding -> said(holding, urgentTo))
                .collect(Collectors.joining("; "));
        return due.isEmpty()
                ? Optional.empty()
                : Optional.of(new Link("/knowledge/" + person.staffNumber(), person.name(), due));
    }

    private String said(Holding holding, LocalDate urgentTo) {
        boolean urgent = holding.state() == Holding.State.DUE
                && holding.lasts().filter(last -> !last.isAfter(urgentTo)).isPresent();
        String state = message(urgent ? "competence.start.due-urgent" : "competence.state." + holding.state());
        String until = holding.lasts()
                .map(last -> message("competence.permit.until", last))
                .orElse("");
        return (holding.subject().code() + " " + state + " " + until).strip();
    }

    private String message(String code, Object... args) {
        return messages.getMessage(code, args, Locale.UK);
    }
}
