package org.crosshead.load.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.crosshead.kernel.traction.RailState;
import org.crosshead.load.GreatestLoads;
import org.crosshead.load.LoadAnswer;
import org.crosshead.load.LoadQuestion;
import org.crosshead.route.Direction;
import org.crosshead.route.Routes;
import org.crosshead.stock.LocomotiveClasses;
import org.crosshead.stock.VehicleKinds;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page that says what a class can take over a road. */
@Controller
class LoadsController {

    private final GreatestLoads loads;
    private final Routes routes;
    private final LocomotiveClasses classes;
    private final VehicleKinds kinds;
    private final Words words;

    LoadsController(GreatestLoads loads, Routes routes, LocomotiveClasses classes, VehicleKinds kinds, Words words) {
        this.loads = loads;
        this.routes = routes;
        this.classes = classes;
        this.kinds = kinds;
        this.words = words;
    }

    /** Words of the page, in the reader's language. */
    @Component("loadWords")
    record Words(MessageSource messages) {

        String of(String code, Object... args) {
            return messages.getMessage(code, args, LocaleContextHolder.getLocale());
        }

        String figure(String key) {
            return of("stock.figure." + key);
        }
    }

    @GetMapping("/loads")
    ModelAndView page(@RequestParam Map<String, String> typed) {
        LoadForm form = LoadForm.of(typed);
        boolean asked = !form.of("route", "").isEmpty()
                && !form.of("class", "").isEmpty()
                && !form.of("kind", "").isEmpty();
        if (!asked) {
            return view(form, null, HttpStatus.OK);
        }
        List<LoadForm.Problem> found = new ArrayList<>();
        Optional<LoadQuestion> question = form.question(found);
        if (question.isEmpty()) {
            return view(form.with(found), null, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Optional<LoadAnswer> answer = loads.answer(question.get());
        if (answer.isEmpty()) {
            return view(
                    form.with(List.of(new LoadForm.Problem("route", "load.refused.unknown"))),
                    null,
                    HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return view(form, LoadPage.of(answer.get(), words), HttpStatus.OK);
    }

    private ModelAndView view(LoadForm form, @Nullable LoadPage page, HttpStatus status) {
        ModelAndView view = new ModelAndView("load/loads");
        view.addObject("form", form);
        view.addObject("page", page);
        view.addObject("routes", routes.all());
        view.addObject(
                "classes", classes.all().stream().map(one -> one.content()).toList());
        view.addObject("kinds", kinds.all().stream().map(one -> one.content()).toList());
        view.addObject("directions", Direction.values());
        view.addObject("rails", RailState.values());
        view.setStatus(status);
        return view;
    }
}
