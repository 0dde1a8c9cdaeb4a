package org.crosshead.competence.web;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.crosshead.competence.Holding;
import org.crosshead.competence.Holdings;
import org.crosshead.competence.KnowledgePolicies;
import org.crosshead.competence.Subject;
import org.crosshead.competence.SubjectCover;
import org.crosshead.crew.Group;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.Post;
import org.crosshead.route.RouteSummary;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Who knows what: people by section and class, for any day, as known now or at an earlier day; with what cover there is. */
@Controller
class EverybodyController {

    /** For which cover is told, from now on. */
    private static final List<Integer> MONTHS = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);

    private static final int PEOPLE_SHOWN = 200;
    private static final int SUBJECTS_SHOWN = 100;

    private final Holdings holdings;
    private final KnowledgePolicies policies;
    private final People people;
    private final SubjectCover cover;
    private final RouteSections sections;
    private final Routes routes;
    private final Clock clock;
    private final ZoneId zone;

    EverybodyController(
            Holdings holdings,
            KnowledgePolicies policies,
            People people,
            SubjectCover cover,
            RouteSections sections,
            Routes routes,
            Clock clock,
            ZoneId zone) {
        this.holdings = holdings;
        this.policies = policies;
        this.people = people;
        this.cover = cover;
        this.sections = sections;
        this.routes = routes;
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * What is asked for, as it was written; blank for no choice.
     *
     * @param known day at whose end it was known so
     * @param from how many people are left out before the first
     */
    record Asked(
            @Nullable String day,
            @Nullable String known,
            Subject.@Nullable Kind kind,
            @Nullable String route,
            @Nullable Post post,
            @Nullable String depot,
            @Nullable Integer from) {

        Group group() {
            return new Group(post, depot == null || depot.isBlank() ? null : depot);
        }

        int first() {
            return from == null || from < 0 ? 0 : from;
        }
    }

    /**
     * A line of the table.
     *
     * @param depots from which they work on the day
     */
    record Row(Person person, List<String> depots, List<Optional<Holding>> cells) {}

    @GetMapping("/knowledge")
    String everybody(Asked asked, Model model) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        LocalDate day = day(asked.day(), today);
        List<Person> group = people(asked, day);
        List<Subject> subjects = subjects(asked, group);
        List<Subject> shown = subjects.subList(0, Math.min(SUBJECTS_SHOWN, subjects.size()));
        Map<Subject, Map<Long, Holding>> all = holdings(shown, asked, day, today);
        Set<Long> concerned = all.values().stream()
                .flatMap(holders -> holders.keySet().stream())
                .collect(Collectors.toSet());
        List<Person> there =
                group.stream().filter(person -> concerned.contains(person.id())).toList();
        int first = Math.min(asked.first(), there.size());
        List<Row> rows = there.subList(first, Math.min(first + PEOPLE_SHOWN, there.size())).stream()
                .map(person -> new Row(
                        person,
                        person.depots(day),
                        shown.stream()
                                .map(subject -> Optional.ofNullable(
                                        all.getOrDefault(subject, Map.of()).get(person.id())))
                                .toList()))
                .toList();
        model.addAttribute("asked", asked);
        model.addAttribute("day", day);
        model.addAttribute("months", MONTHS);
        model.addAttribute("subjects", shown);
        model.addAttribute("subjectsInAll", subjects.size());
        model.addAttribute("rows", rows);
        model.addAttribute("inAll", there.size());
        model.addAttribute("first", first);
        model.addAttribute("next", first + PEOPLE_SHOWN < there.size() ? first + PEOPLE_SHOWN : null);
        model.addAttribute("before", first > 0 ? Math.max(0, first - PEOPLE_SHOWN) : null);
        model.addAttribute("cover", day.isBefore(today) ? List.of() : cover.of(shown, asked.group(), day, MONTHS));
        model.addAttribute("policy", policies.on(day));
        model.addAttribute("kinds", Subject.Kind.values());
        model.addAttribute(
                "routes", routes.all().stream().map(RouteSummary::code).sorted().toList());
        model.addAttribute("depots", people.depots());
        model.addAttribute("posts", List.of(Post.DRIVER, Post.FIREMAN, Post.INSPECTOR, Post.ASSESSOR));
        return "competence/everybody";
    }

    /** Returns the subjects meant; with a depot, those with which any of its people have to do. */
    private List<Subject> subjects(Asked asked, Collection<Person> group) {
        String route = asked.route() == null ? "" : asked.route();
        Set<String> onRoute = sections.all().stream()
                .filter(section -> section.routeCode().equals(route))
                .map(RouteSection::code)
                .collect(Collectors.toSet());
        List<Subject> all = asked.group().depot() == null
                ? holdings.subjects()
                : holdings.subjects(group.stream().map(Person::id).toList());
        return all.stream()
                .filter(subject -> asked.kind() == null || subject.kind() == asked.kind())
                .filter(subject ->
                        route.isEmpty() || (subject.kind() == Subject.Kind.SECTION && onRoute.contains(subject.code())))
                .toList();
    }

    /** Returns those meant who hold a post on the day. */
    private List<Person> people(Asked asked, LocalDate day) {
        Group group = asked.group();
        return people.all().stream()
                .filter(person -> group.includes(person, day))
                .toList();
    }

    private Map<Subject, Map<Long, Holding>> holdings(
            List<Subject> subjects, Asked asked, LocalDate day, LocalDate today) {
        boolean asNow = asked.known() == null || asked.known().isBlank();
        if (asNow && !day.isBefore(today)) {
            return holdings.everybody(subjects, List.of(day)).get(0);
        }
        Instant knownAt = asNow
                ? clock.instant()
                : day(asked.known(), today).plusDays(1).atStartOfDay(zone).toInstant();
        return holdings.everybodyAsKnown(subjects, day, knownAt);
    }

    /** Everything that the choice leaves, a line for each person and subject. */
    @GetMapping("/knowledge.csv")
    void csv(Asked asked, HttpServletResponse response) throws IOException {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        LocalDate day = day(asked.day(), today);
        Map<Long, Person> there =
                people(asked, day).stream().collect(Collectors.toMap(Person::id, Function.identity()));
        Map<Subject, Map<Long, Holding>> all = holdings(subjects(asked, there.values()), asked, day, today);
        response.setContentType("text/csv;charset=UTF-8");
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"knowledge-" + day + ".csv\"");
        try (Writer out = new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8)) {
            out.write("staff_number,name,depots,subject,code,state,last_good_day,last_worked,assessed,limits\r\n");
            for (Map<Long, Holding> holders : all.values()) {
                for (Map.Entry<Long, Holding> one : holders.entrySet()) {
                    Person person = there.get(one.getKey());
                    if (person != null) {
                        out.write(line(person, day, one.getValue()));
                    }
                }
            }
        }
    }

    private static String line(Person person, LocalDate on, Holding holding) {
        return String.join(
                        ",",
                        cell(person.staffNumber()),
                        cell(person.name()),
                        cell(String.join("; ", person.depots(on))),
                        holding.subject().kind().name(),
                        cell(holding.subject().code()),
                        holding.state().name(),
                        day(holding.lastGoodDay()),
                        day(holding.lastWorked()),
                        day(holding.assessed()),
                        holding.limits().stream()
                                .map(Holding.Limit::name)
                                .sorted()
                                .collect(Collectors.joining(" ")))
                + "\r\n";
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }

    /** As RFC 4180 has it; a spreadsheet is kept from taking a word for a formula. */
    private static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@\t".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return safe.matches("[^,\"\r\n]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static LocalDate day(@Nullable String typed, LocalDate otherwise) {
        try {
            return typed == null || typed.isBlank() ? otherwise : LocalDate.parse(typed.strip());
        } catch (DateTimeParseException ex) {
            return otherwise;
        }
    }
}
