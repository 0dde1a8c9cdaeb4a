package org.crosshead.route;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Temporary restrictions of speed. None is changed: it is withdrawn, and another entered. */
@Service
public class Restrictions {

    private final RestrictionStore store;
    private final RouteStore routes;
    private final RouteJournal journal;

    Restrictions(RestrictionStore store, RouteStore routes, RouteJournal journal) {
        this.store = store;
        this.routes = routes;
        this.journal = journal;
    }

    /**
     * Stores a restriction and returns its id.
     *
     * @throws RouteRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public long enter(RestrictionDraft draft) {
        RouteRefusedException.throwIfAny(RestrictionRules.problems(draft, routes::extent, store.all()));
        long id = store.insert(draft, journal.stamp());
        journal.write("restriction", "entered", id, draft.number() + " on " + draft.routeCode());
        return id;
    }

    /**
     * Ends a restriction from this moment.
     *
     * @throws RouteRefusedException if it is not known or already withdrawn, or no reason is given
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void withdraw(long id, String reason) {
        RouteRefusedException.throwIfAny(new Problems().reason(reason).found());
        if (!store.withdraw(id, reason, journal.stamp())) {
            throw new RouteRefusedException(List.of(RouteProblem.refused("id", "not-in-force")));
        }
        journal.write("restriction", "withdrawn", id, reason);
    }

    public Optional<Restriction> find(long id) {
        return store.find(id);
    }

    /**
     * Returns the restrictions that hold on a route at any moment of a span of time, both ends included. One withdrawn within
     * the span still counts; one withdrawn by its beginning does not.
     */
    public List<Restriction> inForce(String routeCode, Instant from, Instant to) {
        return store.inForce(routeCode, from, to);
    }

    /** Returns all of them, also those past and withdrawn, by first moment. */
    public List<Restriction> all() {
        return store.all();
    }
}
