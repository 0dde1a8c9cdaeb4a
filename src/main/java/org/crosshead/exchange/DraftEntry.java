package org.crosshead.exchange;

import java.util.List;
import java.util.function.Consumer;
import org.crosshead.briefing.Policies;
import org.crosshead.briefing.PolicyRefusedException;
import org.crosshead.competence.ActRefusedException;
import org.crosshead.competence.ClassGuides;
import org.crosshead.competence.Knowledge;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonChangedException;
import org.crosshead.crew.PersonRefusedException;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteChangedException;
import org.crosshead.route.RouteRefusedException;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.Cues;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.crosshead.stock.Engines;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockChangedException;
import org.crosshead.stock.StockRefusedException;
import org.crosshead.stock.VehicleKinds;
import org.crosshead.working.TrainChangedException;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainRefusedException;
import org.crosshead.working.Trains;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;

/**
 * Enters drafts through the services of their capabilities, in an order in which each finds what it needs. What leans on something
 * refused is not tried, so that one mistake isn't told many times.
 */
@Component
class DraftEntry {

    private static final String COMPETENCE_REFUSED = "competence.refused.";
    private static final String POLICY_REFUSED = "policy.refused.";
    private static final String TRAIN_REFUSED = "train.refused.";

    private final Routes routes;
    private final Restrictions restrictions;
    private final StockServices stock;
    private final People people;
    private final Trains trains;
    private final KnowledgeServices knowledge;
    private final Policies policies;

    DraftEntry(
            Routes routes,
            Restrictions restrictions,
            StockServices stock,
            People people,
            Trains trains,
            KnowledgeServices knowledge,
            Policies policies) {
        this.policies = policies;
        this.knowledge = knowledge;
        this.routes = routes;
        this.restrictions = restrictions;
        this.stock = stock;
        this.people = people;
        this.trains = trains;
    }

    /** The services of the stock. */
    @Component
    record StockServices(LocomotiveClasses classes, Engines engines, VehicleKinds kinds, Formations formations) {}

    /** The services of what people know. */
    @Component
    record KnowledgeServices(RouteSections sections, Cues cues, ClassGuides guides, Knowledge known) {}

    /** Enters the whole plan; callers hold the transaction, and give it up when there are problems. */
    void enter(ImportPlan plan, String reason, ProblemList problems) {
        each(plan.policies(), policies::enter, problems);
        each(plan.people(), people::enter, problems);
        each(plan.lines().routes(), draft -> routes.enter(draft, reason), problems);
        each(plan.stock().classes(), draft -> stock.classes().enter(draft, reason), problems);
        each(plan.stock().kinds(), draft -> stock.kinds().enter(draft, reason), problems);
        problems.throwIfAny();
        each(plan.lines().junctions(), this::join, problems);
        each(plan.lines().restrictions(), restrictions::enter, problems);
        each(plan.stock().engines(), draft -> stock.engines().enter(draft, reason), problems);
        each(plan.stock().formations(), draft -> stock.formations().enter(draft, reason), problems);
        problems.throwIfAny();
        each(plan.trains(), draft -> run(draft, reason), problems);
        each(plan.knowledge().sections(), knowledge.sections()::enter, problems);
        problems.throwIfAny();
        each(plan.knowledge().cues(), knowledge.cues()::enter, problems);
        each(plan.knowledge().guides(), knowledge.guides()::enter, problems);
        each(plan.knowledge().events(), this::know, problems);
        problems.throwIfAny();
    }

    private void join(JunctionDraft draft) {
        if (!routes.junctions().contains(draft)) {
            routes.join(draft);
        }
    }

    /** Enters what is known of somebody; what is there already is left as it is, so that the same file can come again. */
    private void know(KnowledgeReader.EventDraft draft) {
        knowledge
                .known()
                .enteredAnew(new Knowledge.Entry(
                        personId(draft.staffNumber()),
                        draft.kind(),
                        draft.subject(),
                        draft.day(),
                        draft.other().isBlank() ? null : Long.valueOf(personId(draft.other())),
                        null,
                        draft.until(),
                        null,
                        draft.note()));
    }

    private long personId(String staffNumber) {
        return people.byStaffNumber(staffNumber)
                .map(Person::id)
                .orElseThrow(() -> new ActRefusedException("not-offered"));
    }

    private void run(TrainDraft draft, String reason) {
        trains.find(draft.code(), draft.day())
                .ifPresentOrElse(
                        train -> trains.change(train.id(), train.version(), draft, reason), () -> trains.enter(draft));
    }

    private static <T> void each(List<Located<T>> drafts, Consumer<T> enter, ProblemList problems) {
        for (Located<T> located : drafts) {
            try {
                enter.accept(located.draft());
            } catch (RouteRefusedException ex) {
                ex.problems()
                        .forEach(one -> problems.add(
                                located.problem(path(one.list(), one.index(), one.field()), one.code(), one.args())));
            } catch (TrainRefusedException ex) {
                ex.problems()
                        .forEach(one -> problems.add(located.problem(
                                path(one.list(), one.index(), one.field()), TRAIN_REFUSED + one.code(), one.args())));
            } catch (StockRefusedException ex) {
                ex.problems().forEach(one -> problems.add(located.problem(one.field(), one.code(), one.args())));
            } catch (PersonRefusedException ex) {
                ex.problems().forEach(one -> problems.add(located.problem(one.field(), one.code(), one.args())));
            } catch (PolicyRefusedException ex) {
                problems.add(located.problem(ex.field(), POLICY_REFUSED + ex.code(), List.copyOf(ex.args())));
            } catch (SectionRefusedException ex) {
                problems.add(located.problem("", COMPETENCE_REFUSED + ex.code(), List.of()));
            } catch (ActRefusedException ex) {
                problems.add(located.problem("", COMPETENCE_REFUSED + ex.code(), List.of()));
            } catch (RouteChangedException
                    | StockChangedException
                    | PersonChangedException
                    | TrainChangedException ex) {
                problems.refuse(located.head(), "", "changed");
            } catch (AccessDeniedException ex) {
                problems.refuseFile(located.head().file().fileName(), 0, "not-allowed");
                return;
            }
        }
    }

    private static String path(String list, int index, String field) {
        String entry = index < 0 ? list : list + "[" + index + "]";
        return entry.isEmpty() || field.isEmpty() ? entry + field : entry + "." + field;
    }
}
