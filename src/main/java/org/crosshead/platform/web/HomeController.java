package org.crosshead.platform.web;

import java.util.List;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The start page: what each capability has for this person today. */
@Controller
class HomeController {

    private final ObjectProvider<StartPageSection> sections;
    private final CurrentActor actor;

    HomeController(ObjectProvider<StartPageSection> sections, CurrentActor actor) {
        this.sections = sections;
        this.actor = actor;
    }

    @GetMapping("/")
    String start(Model model) {
        Actor acting = actor.get();
        model.addAttribute("name", acting.name());
        model.addAttribute("posts", acting.posts().stream().sorted().toList());
        model.addAttribute(
                "sections",
                sections.orderedStream()
                        .filter(section -> section.isFor(acting))
                        .map(section -> new Block(section.titleCode(), section.emptyCode(), section.links(acting)))
                        .toList());
        return "platform/start";
    }

    /** A block as the page draws it. */
    record Block(String titleCode, String emptyCode, List<StartPageSection.Link> links) {}
}
