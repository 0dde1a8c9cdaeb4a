package org.crosshead.exchange;

import java.util.List;
import org.crosshead.briefing.PolicyDraft;
import org.crosshead.competence.ClassGuides;
import org.crosshead.crew.PersonDraft;
import org.crosshead.route.JunctionDraft;
import org.crosshead.route.RestrictionDraft;
import org.crosshead.route.RouteDraft;
import org.crosshead.routeknowledge.Cue;
import org.crosshead.routeknowledge.SectionDraft;
import org.crosshead.stock.EngineDraft;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.LocomotiveClassDraft;
import org.crosshead.stock.VehicleKindDraft;
import org.crosshead.working.TrainDraft;

/** Everything that the files say, as drafts. */
record ImportPlan(
        Lines lines,
        Stock stock,
        List<Located<PersonDraft>> people,
        List<Located<TrainDraft>> trains,
        Knowledge knowledge,
        List<Located<PolicyDraft>> policies) {

    ImportPlan {
        people = List.copyOf(people);
        trains = List.copyOf(trains);
        policies = List.copyOf(policies);
    }

    /** Routes and what lies on them. */
    record Lines(
            List<Located<RouteDraft>> routes,
            List<Located<JunctionDraft>> junctions,
            List<Located<RestrictionDraft>> restrictions) {

        Lines {
            routes = List.copyOf(routes);
            junctions = List.copyOf(junctions);
            restrictions = List.copyOf(restrictions);
        }
    }

    /** Sections that people sign, what is to be known of classes, and what is known of people. */
    record Knowledge(
            List<Located<SectionDraft>> sections,
            List<Located<Cue>> cues,
            List<Located<ClassGuides.Draft>> guides,
            List<Located<KnowledgeReader.EventDraft>> events) {

        Knowledge {
            sections = List.copyOf(sections);
            cues = List.copyOf(cues);
            guides = List.copyOf(guides);
            events = List.copyOf(events);
        }
    }

    /** Engines and vehicles. */
    record Stock(
            List<Located<LocomotiveClassDraft>> classes,
            List<Located<EngineDraft>> engines,
            List<Located<VehicleKindDraft>> kinds,
            List<Located<FormationDraft>> formations) {

        Stock {
            classes = List.copyOf(classes);
            engines = List.copyOf(engines);
            kinds = List.copyOf(kinds);
            formations = List.copyOf(formations);
        }
    }
}
