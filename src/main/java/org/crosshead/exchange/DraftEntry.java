package org.crosshead.exchange;

import java.util.List;
import java.util.function.Consumer;
import org.crosshead.crew.People;
import org.crosshead.crew.PersonChangedException;
import org.crosshead.crew.PersonRefusedException;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.Restrictions;
import org.crosshead.route.RouteChangedException;
import org.crosshead.route.RouteProblem;
import org.crosshead.route.RouteRefusedException;
import org.crosshead.route.Routes;
import org.crosshead.stock.Engines;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.StockChangedException;
import org.crosshead.stock.StockRefusedException;
import org.crosshead.stock.VehicleKinds;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;

/**
 * Enters drafts through the services of their capabilities, in an order in which each finds what it needs. What leans on something
 * refused is not tried, so that one mistake isn't told many times.
 */
@Component
class DraftEntry {

    private final Routes routes;
    private final Restrictions restrictions;
    private final StockServices stock;
    private final People people;

    DraftEntry(Routes routes, Restrictions restrictions, StockServices stock, People people) {
        this.routes = routes;
        this.restrictions = restrictions;
        this.stock = stock;
        this.people = people;
    }

    /** The services of the stock. */
    @Component
    record StockServices(LocomotiveClasses classes, Engines engines, VehicleKinds kinds, Formations formations) {}

    /** Enters the whole plan; callers hold the transaction, and give it up when there are problems. */
    void enter(ImportPlan plan, String reason, ProblemList problems) {
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
    }

    private void join(JunctionDraft draft) {
        if (!routes.junctions().contains(draft)) {
            routes.join(draft);
        }
    }

    private static <T> void each(List<Located<T>> drafts, Consumer<T> enter, ProblemList problems) {
        for (Located<T> located : drafts) {
            try {
                enter.accept(located.draft());
            } catch (RouteRefusedException ex) {
                ex.problems().forEach(one -> problems.add(located.problem(path(one), one.code(), one.args())));
            } catch (StockRefusedException ex) {
                ex.problems().forEach(one -> problems.add(located.problem(one.field(), one.code(), one.args())));
            } catch (PersonRefusedException ex) {
                ex.problems().forEach(one -> problems.add(located.problem(one.field(), one.code(), one.args())));
            } catch (RouteChangedException | StockChangedException | PersonChangedException ex) {
                problems.refuse(located.head(), "", "changed");
            } catch (AccessDeniedException ex) {
                problems.refuseFile(located.head().file().fileName(), 0, "not-allowed");
                return;
            }
        }
    }

    private static String path(RouteProblem problem) {
        String list = problem.index() < 0 ? problem.list() : problem.list() + "[" + problem.index() + "]";
        return list.isEmpty() || problem.field().isEmpty() ? list + problem.field() : list + "." + problem.field();
    }
}
