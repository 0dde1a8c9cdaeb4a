package org.crosshead.crew.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.crosshead.crew.People;
import org.crosshead.crew.Person;
import org.crosshead.crew.PersonChangedException;
import org.crosshead.crew.PersonProblem;
import org.crosshead.crew.PersonRefusedException;
import org.crosshead.platform.NotFoundException;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Lists people and lets a manager enter and change them. */
@Controller
@RequestMapping("/people")
class PeopleController {

    private static final HttpStatusCode REFUSED = HttpStatus.UNPROCESSABLE_CONTENT;

    private final People people;
    private final Clock clock;
    private final ZoneId zone;

    PeopleController(People people, Clock clock, ZoneId zone) {
        this.people = people;
        this.clock = clock;
        this.zone = zone;
    }

    @GetMapping
    ModelAndView list(HttpServletRequest request) {
        LocalDate today = LocalDate.now(clock.withZone(zone));
        return new ModelAndView("crew/people", "page", PeoplePage.of(today, people.all(), mayEdit(request)));
    }

    @GetMapping("/new")
    ModelAndView fresh(HttpServletRequest request) {
        return page(
                new PersonPage(PersonForm.empty(), true, mayEdit(request), List.of(), people.depots()), HttpStatus.OK);
    }

    @PostMapping("/new")
    ModelAndView enter(
            @RequestParam MultiValueMap<String, String> typed,
            HttpServletRequest request,
            RedirectAttributes redirect) {
        String staffNumber = typed.getOrDefault("staffNumber", List.of("")).get(0);
        PersonForm form = PersonForm.of(staffNumber, typed).withoutEmptyRows();
        if (people.byStaffNumber(form.staffNumber()).isPresent()) {
            PersonProblem taken = new PersonProblem("staffNumber", "crew.refused.staff-number-taken", List.of());
            return refused(form, true, List.of(taken), request);
        }
        return store(form, true, request, redirect);
    }

    @GetMapping("/{staffNumber}")
    ModelAndView person(@PathVariable String staffNumber, HttpServletRequest request) {
        PersonForm form = PersonForm.of(known(staffNumber));
        return page(new PersonPage(form, false, mayEdit(request), List.of(), people.depots()), HttpStatus.OK);
    }

    @PostMapping("/{staffNumber}")
    ModelAndView change(
            @PathVariable String staffNumber,
            @RequestParam MultiValueMap<String, String> typed,
            HttpServletRequest request,
            RedirectAttributes redirect) {
        String known = known(staffNumber).staffNumber();
        return store(PersonForm.of(known, typed).withoutEmptyRows(), false, request, redirect);
    }

    private ModelAndView store(
            PersonForm form, boolean fresh, HttpServletRequest request, RedirectAttributes redirect) {
        List<PersonProblem> unreadable = form.unreadable();
        if (!unreadable.isEmpty()) {
            return refused(form, fresh, unreadable, request);
        }
        try {
            people.enter(form.toDraft());
        } catch (PersonRefusedException ex) {
            return refused(form, fresh, ex.problems(), request);
        } catch (PersonChangedException ex) {
            PersonProblem changed = new PersonProblem("", "crew.refused.changed", List.of());
            return refused(form, fresh, List.of(changed), request);
        }
        redirect.addFlashAttribute("done", "crew.done.person");
        ModelAndView done = new ModelAndView("redirect:/people");
        done.setStatus(HttpStatus.SEE_OTHER);
        return done;
    }

    private Person known(String staffNumber) {
        return people.byStaffNumber(staffNumber).orElseThrow(() -> new NotFoundException("person", staffNumber));
    }

    private ModelAndView refused(
            PersonForm form, boolean fresh, List<PersonProblem> problems, HttpServletRequest request) {
        return page(new PersonPage(form.withEmptyRows(), fresh, mayEdit(request), problems, people.depots()), REFUSED);
    }

    private static ModelAndView page(PersonPage page, HttpStatusCode status) {
        ModelAndView view = new ModelAndView("crew/person", "page", page);
        view.setStatus(status);
        return view;
    }

    private static boolean mayEdit(HttpServletRequest request) {
        return request.isUserInRole("MANAGER");
    }
}
