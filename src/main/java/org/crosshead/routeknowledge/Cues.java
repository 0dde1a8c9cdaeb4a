package org.crosshead.routeknowledge;

import java.util.List;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.route.RouteDraft;
import org.crosshead.route.Routes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The cues of sections. Each points to a thing of the route by its name: where the route has it no longer, the cue is stale. */
@Service
public class Cues {

    private static final int LONGEST = 300;

    private final JdbcClient jdbc;
    private final RouteSections sections;
    private final Routes routes;
    private final Journal journal;
    private final CurrentActor actor;

    Cues(JdbcClient jdbc, RouteSections sections, Routes routes, Journal journal, CurrentActor actor) {
        this.jdbc = jdbc;
        this.sections = sections;
        this.routes = routes;
        this.journal = journal;
        this.actor = actor;
    }

    /** Returns the cues of a section, in the order in which they were entered. */
    public List<Cue> of(String sectionCode) {
        return jdbc.sql("select * from section_cue where section_code = ? order by id")
                .param(sectionCode)
                .query((rs, row) -> new Cue(
                        rs.getString("section_code"),
                        rs.getString("feature_name"),
                        Cue.Tells.valueOf(rs.getString("tells")),
                        rs.getString("meaning"),
                        rs.getString("missed")))
                .list();
    }

    /**
     * Enters a cue, in place of one for the same thing that tells the same.
     *
     * @throws SectionRefusedException if there is no such section or thing on it, or nothing is said
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void enter(Cue cue) {
        RouteSection section =
                sections.find(cue.sectionCode()).orElseThrow(() -> new SectionRefusedException("cue-section"));
        boolean unsaid = cue.meaning().isBlank()
                || cue.missed().isBlank()
                || cue.meaning().length() > LONGEST
                || cue.missed().length() > LONGEST;
        if (unsaid) {
            throw new SectionRefusedException("cue-words");
        }
        if (isStale(cue, section)) {
            throw new SectionRefusedException("cue-feature");
        }
        jdbc.sql("delete from section_cue where section_code = ? and feature_name = ? and tells = ?")
                .params(cue.sectionCode(), cue.featureName(), cue.tells().name())
                .update();
        jdbc.sql(
                        "insert into section_cue (section_code, feature_name, tells, meaning, missed, entered_by) values (?, ?, ?, ?, ?, ?)")
                .params(cue.sectionCode(), cue.featureName(), cue.tells().name())
                .params(cue.meaning(), cue.missed(), actor.get().name())
                .update();
        journal.write("section.cue", "section", section.id(), cue.sectionCode() + " " + cue.featureName());
    }

    /** Says whether the route has no longer the one thing on this section to which a cue points. */
    public boolean isStale(Cue cue, RouteSection section) {
        return routes.current(section.routeCode())
                .map(route -> route.content().features().stream()
                                .filter(feature -> feature.name().equals(cue.featureName()))
                                .filter(feature -> on(feature, section))
                                .count()
                        != 1)
                .orElse(true);
    }

    private static boolean on(RouteDraft.Feature feature, RouteSection section) {
        Double end = feature.toMeasure();
        double last = end == null ? feature.atMeasure() : end;
        return feature.scope().covers(section.direction())
                && last >= section.fromMeasure()
                && feature.atMeasure() <= section.toMeasure();
    }
}
