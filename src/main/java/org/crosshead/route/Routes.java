package org.crosshead.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.crosshead.route.RouteDraft.CurveLength;
import org.crosshead.route.RouteDraft.Feature;
import org.crosshead.route.RouteDraft.GradientLength;
import org.crosshead.route.RouteDraft.LimitLength;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Routes and where they join. A change is a new revision; none is ever edited. */
@Service
public class Routes {

    private final RouteStore store;
    private final JunctionStore junctions;
    private final RouteJournal journal;

    Routes(RouteStore store, JunctionStore junctions, RouteJournal journal) {
        this.store = store;
        this.junctions = junctions;
        this.journal = journal;
    }

    /**
     * Stores a route, or a further revision of it. Its lists are kept in the order in which they lie along the route.
     *
     * @throws RouteRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public RouteRevision enter(RouteDraft draft, String reason) {
        return store(draft, reason, null);
    }

    /**
     * Stores a revision made from the one that a person had before them.
     *
     * @param basedOn number of that revision, 0 for a new route
     * @throws RouteRefusedException if anything in the draft is wrong
     * @throws RouteChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public RouteRevision enter(RouteDraft draft, String reason, int basedOn) {
        return store(draft, reason, basedOn);
    }

    /**
     * Accepts the estimates of a route as it stands: a further revision in which they count.
     *
     * @param basedOn number of the revision that the person had before them
     * @throws RouteRefusedException if no such route is known or none of its estimates waits
     * @throws RouteChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public RouteRevision acceptEstimates(String code, int basedOn) {
        RouteDraft content = store.current(code)
                .map(RouteRevision::content)
                .filter(draft -> draft.hasEstimates() && !draft.estimatesAccepted())
                .orElseThrow(() -> new RouteRefusedException(
                        List.of(RouteProblem.refused("estimatesAccepted", "nothing-to-accept"))));
        return store(content.accepted(), "Estimates accepted", basedOn);
    }

    public Optional<RouteRevision> current(String code) {
        return store.current(code);
    }

    public Optional<RouteRevision> revision(long id) {
        return store.revision(id);
    }

    public Optional<RouteRevision> revision(String code, int number) {
        return store.revision(code, number);
    }

    /** Returns every route as it stands now, by code. */
    public List<RouteSummary> all() {
        return store.all();
    }

    /** Returns the revisions of a route, the newest first. */
    public List<RevisionNote> history(String code) {
        return store.history(code);
    }

    public List<JunctionDraft> junctions() {
        return junctions.all();
    }

    /**
     * Stores a junction.
     *
     * @throws RouteRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void join(JunctionDraft draft) {
        RouteRefusedException.throwIfAny(JunctionRules.problems(draft, store::extent, junctions.all()));
        long id = junctions.insert(draft, journal.stamp());
        journal.write("junction", "entered", id, draft.name());
    }

    private RouteRevision store(RouteDraft entered, String reason, @Nullable Integer basedOn) {
        RouteDraft draft = ordered(entered);
        List<RouteProblem> problems = new ArrayList<>(RouteRules.problems(entered, reason));
        problems.addAll(JunctionRules.left(draft, junctions.all()));
        store.extent(draft.code())
                .filter(before -> before.unit() != draft.measureUnit())
                .ifPresent(before -> problems.add(RouteProblem.refused("measureUnit", "measure-unit-changed")));
        RouteRefusedException.throwIfAny(problems);
        RouteStore.Head head = head(draft.code());
        if ((basedOn != null && basedOn != head.number()) || !store.advance(head)) {
            throw new RouteChangedException(draft.code());
        }
        long id = store.insertRevision(head, new RouteStore.Making(journal.stamp(), reason), draft);
        journal.write("route", head.number() == 0 ? "entered" : "revised", head.id(), draft.code() + ": " + reason);
        return store.revision(id).orElseThrow();
    }

    private RouteStore.Head head(String code) {
        return store.head(code).orElseGet(() -> {
            try {
                return store.insertHead(code);
            } catch (DuplicateKeyException ex) {
                throw new RouteChangedException(code);
            }
        });
    }

    private static RouteDraft ordered(RouteDraft draft) {
        return new RouteDraft(
                draft.code(),
                draft.name(),
                draft.measureUnit(),
                draft.risingName(),
                draft.fallingName(),
                draft.fromMeasure(),
                draft.toMeasure(),
                draft.lines(),
                draft.gradients().stream()
                        .map(Routes::levelAsZero)
                        .sorted(Comparator.comparingDouble(GradientLength::fromMeasure))
                        .toList(),
                draft.curves().stream()
                        .sorted(Comparator.comparingDouble(CurveLength::fromMeasure))
                        .toList(),
                draft.limits().stream()
                        .sorted(Comparator.comparingDouble(LimitLength::fromMeasure))
                        .toList(),
                draft.features().stream()
                        .sorted(Comparator.comparingDouble(Feature::atMeasure))
                        .toList(),
                draft.estimatesAccepted() && draft.hasEstimates());
    }

    private static GradientLength levelAsZero(GradientLength length) {
        return length.notation() == GradientNotation.LEVEL
                ? new GradientLength(
                        length.fromMeasure(),
                        length.toMeasure(),
                        GradientNotation.LEVEL,
                        0,
                        length.origin(),
                        length.note())
                : length;
    }
}
