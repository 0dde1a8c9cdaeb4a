package org.crosshead.competence.web;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.crosshead.competence.ClassGuides;
import org.crosshead.competence.KnowledgePolicyDesk;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.crosshead.routeknowledge.RouteSections;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: roads, classes and rules that wait for a second person, who is not the one that entered them. */
@Component
@Order(6)
class ToApprove implements StartPageSection {

    private final RouteSections sections;
    private final ClassGuides guides;
    private final KnowledgePolicyDesk policies;
    private final MessageSource messages;

    ToApprove(RouteSections sections, ClassGuides guides, KnowledgePolicyDesk policies, MessageSource messages) {
        this.sections = sections;
        this.guides = guides;
        this.policies = policies;
        this.messages = messages;
    }

    @Override
    public String titleCode() {
        return "competence.start.approve";
    }

    @Override
    public String emptyCode() {
        return "competence.start.approve-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("MANAGER") || actor.holds("ASSESSOR");
    }

    @Override
    public List<Link> links(Actor actor) {
        Stream<Link> roads = sections.all().stream()
                .filter(section ->
                        section.approvedBy() == null && !section.enteredBy().equals(actor.name()))
                .map(section -> link("/sections", section.code() + " " + section.title(), section.enteredBy()));
        Stream<Link> classes = guides.all().stream()
                .filter(guide ->
                        guide.approvedBy() == null && !guide.enteredBy().equals(actor.name()))
                .map(guide -> link("/class-guides", guide.classCode(), guide.enteredBy()));
        Stream<Link> rules = policies.all().stream()
                .filter(policy -> policy.approver().isEmpty() && !policy.owner().equals(actor.name()))
                .map(policy -> link(
                        "/knowledge-policy",
                        messages.getMessage(
                                "competence.policy.version",
                                new Object[] {policy.version(), policy.validFrom()},
                                Locale.UK),
                        policy.owner()));
        return Stream.of(roads, classes, rules).flatMap(links -> links).toList();
    }

    private Link link(String path, String text, String by) {
        return new Link(path, text, messages.getMessage("competence.start.approve.by", new Object[] {by}, Locale.UK));
    }
}
