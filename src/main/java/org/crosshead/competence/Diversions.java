package org.crosshead.competence;

import java.util.List;
import java.util.Objects;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.Direction;
import org.crosshead.route.RouteRevision;
import org.crosshead.route.Routes;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.Trains;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Where trains may be diverted as planned: who knows it is told beside the decision on the crew, and does not bar the train. Once a train is
 * diverted its path is changed, and decided on as any.
 */
@Service
public class Diversions {

    private final JdbcClient jdbc;
    private final Trains trains;
    private final Routes routes;
    private final Journal journal;
    private final CurrentActor actor;
    private final ApplicationEventPublisher events;

    Diversions(
            JdbcClient jdbc,
            Trains trains,
            Routes routes,
            Journal journal,
            CurrentActor actor,
            ApplicationEventPublisher events) {
        this.jdbc = jdbc;
        this.trains = trains;
        this.routes = routes;
        this.journal = journal;
        this.actor = actor;
        this.events = events;
    }

    /** A stretch over which a train may be diverted. */
    public record Planned(long id, Leg leg) {}

    public List<Planned> of(long trainId) {
        return jdbc.sql("select * from train_diversion where train_id = ? order by id")
                .param(trainId)
                .query((rs, row) -> new Planned(
                        rs.getLong("id"),
                        new Leg(
                                rs.getString("route_code"),
                                rs.getDouble("from_measure"),
                                rs.getDouble("to_measure"),
                                rs.getString("line_name"),
                                Direction.valueOf(rs.getString("direction")),
                                false)))
                .list();
    }

    /**
     * Plans a stretch over which a train may be diverted; the direction follows from its measures.
     *
     * @throws ActRefusedException if it does not lie on a line of a route
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public void plan(long trainId, String routeCode, String line, double fromMeasure, double toMeasure) {
        if (trains.find(trainId).isEmpty()) {
            throw new NotFoundException("train", trainId);
        }
        var route = routes.current(routeCode)
                .map(RouteRevision::content)
                .orElseThrow(() -> new ActRefusedException("section-route"));
        double low = Math.min(fromMeasure, toMeasure);
        double high = Math.max(fromMeasure, toMeasure);
        boolean within = low >= route.fromMeasure() && high <= route.toMeasure() && low < high;
        if (!within || !route.lines().contains(line)) {
            throw new ActRefusedException("diversion-extent");
        }
        Direction direction = toMeasure > fromMeasure ? Direction.RISING : Direction.FALLING;
        jdbc.sql(
                        "insert into train_diversion (train_id, route_code, from_measure, to_measure, line_name, direction, entered_by)"
                                + " values (?, ?, ?, ?, ?, ?, ?)")
                .params(trainId, routeCode, fromMeasure, toMeasure)
                .params(line, direction.name(), actor.get().name())
                .update();
        journal.write("diversion.planned", "train", trainId, routeCode);
        events.publishEvent(new TrainHelpChanged(trainId));
    }

    /** Takes a planned stretch away. */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public void remove(long trainId, long id) {
        int gone = jdbc.sql("delete from train_diversion where id = ? and train_id = ?")
                .params(id, trainId)
                .update();
        if (gone != 1) {
            throw new NotFoundException("diversion", Objects.toString(id));
        }
        journal.write("diversion.removed", "train", trainId, String.valueOf(id));
        events.publishEvent(new TrainHelpChanged(trainId));
    }
}
