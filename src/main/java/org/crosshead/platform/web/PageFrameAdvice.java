package org.crosshead.platform.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.security.Endpoints;
import org.crosshead.platform.web.PageFrame.NavigationLink;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Gives every page its navigation by post; the table of endpoints says which links a person sees. */
@ControllerAdvice
class PageFrameAdvice {

    private static final List<Map.Entry<String, String>> LINKS = List.of(
            Map.entry("/", "platform.nav.start"),
            Map.entry("/trains", "platform.nav.trains"),
            Map.entry("/briefings", "platform.nav.briefings"),
            Map.entry("/routes", "platform.nav.routes"),
            Map.entry("/classes", "platform.nav.classes"),
            Map.entry("/engines", "platform.nav.engines"),
            Map.entry("/vehicles", "platform.nav.vehicles"),
            Map.entry("/formations", "platform.nav.formations"),
            Map.entry("/people", "platform.nav.people"),
            Map.entry("/sections", "platform.nav.sections"),
            Map.entry("/self-test", "platform.nav.self-test"),
            Map.entry("/knowledge", "platform.nav.knowledge"),
            Map.entry("/import", "platform.nav.import"),
            Map.entry("/journal", "platform.nav.journal"),
            Map.entry("/accounts", "platform.nav.accounts"));

    private final CurrentActor actor;
    private final boolean demonstration;

    PageFrameAdvice(CurrentActor actor, @Value("${crosshead.demonstration:false}") boolean demonstration) {
        this.actor = actor;
        this.demonstration = demonstration;
    }

    @ModelAttribute("frame")
    PageFrame frame(HttpServletRequest request) {
        Actor acting = actor.get();
        if (acting.accountId() == null && acting.posts().isEmpty()) {
            return new PageFrame(demonstration, null, List.of());
        }
        String path = request.getRequestURI().substring(request.getContextPath().length());
        List<NavigationLink> links = LINKS.stream()
                .filter(link -> Endpoints.mayRead(link.getKey(), acting.posts()))
                .map(link -> new NavigationLink(link.getKey(), link.getValue(), leadsTo(link.getKey(), path)))
                .toList();
        return new PageFrame(demonstration, acting.name(), links);
    }

    private static boolean leadsTo(String link, String path) {
        return path.equals(link) || (link.length() > 1 && path.startsWith(link + "/"));
    }
}
