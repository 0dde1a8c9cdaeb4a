package org.crosshead.routeknowledge.web;

import java.util.List;
import org.crosshead.platform.NotFoundException;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.crosshead.route.Routes;
import org.crosshead.routeknowledge.RouteSection;
import org.crosshead.routeknowledge.RouteSections;
import org.crosshead.routeknowledge.SectionRefusedException;
import org.crosshead.routeknowledge.question.HandQuestion;
import org.crosshead.routeknowledge.question.QuestionBank;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The questions on a section that somebody has written. */
@Controller
@RequestMapping("/self-test/{code}/bank")
class QuestionBankController {

    private final QuestionBank bank;
    private final RouteSections sections;
    private final Routes routes;

    QuestionBankController(QuestionBank bank, RouteSections sections, Routes routes) {
        this.bank = bank;
        this.sections = sections;
        this.routes = routes;
    }

    /** A question with its place in words. */
    record Row(HandQuestion question, String at) {}

    /** What was sent, as it was written: wrong answers a line each. */
    record Form(
            @Nullable String at,
            @Nullable String words,
            @Nullable String right,
            @Nullable String wrong,
            @Nullable String because,
            @Nullable String safety) {}

    @GetMapping
    String list(@PathVariable String code, @RequestParam(defaultValue = "0") int change, Model model) {
        RouteSection section = section(code);
        MeasureUnit unit = unit(section);
        List<HandQuestion> all = bank.latest(code);
        model.addAttribute("section", section);
        model.addAttribute(
                "rows",
                all.stream()
                        .map(question -> new Row(question, Measures.format(question.atMeasure(), unit)))
                        .toList());
        Form form = all.stream()
                .filter(question -> question.number() == change && !question.withdrawn())
                .findFirst()
                .map(question -> new Form(
                        Measures.exact(question.atMeasure(), unit),
                        question.words(),
                        question.right(),
                        String.join("\n", question.wrong()),
                        question.because(),
                        question.safetyCritical() ? "yes" : null))
                .orElse(new Form("", "", "", "", "", null));
        if (!model.containsAttribute("form")) {
            model.addAttribute("form", form);
        }
        model.addAttribute("number", change);
        return "routeknowledge/bank";
    }

    private RouteSection section(String code) {
        return sections.find(code).orElseThrow(() -> new NotFoundException("section", code));
    }

    private MeasureUnit unit(RouteSection section) {
        return routes.current(section.routeCode())
                .map(route -> route.content().measureUnit())
                .orElse(MeasureUnit.CHAINS);
    }

    @PostMapping
    String write(@PathVariable String code, @RequestParam int number, Form form, RedirectAttributes flash) {
        RouteSection section = section(code);
        try {
            bank.write(new QuestionBank.Draft(
                    code,
                    number,
                    Measures.parse(text(form.at()), unit(section))
                            .orElseThrow(() -> new SectionRefusedException("question-place")),
                    text(form.words()),
                    text(form.right()),
                    text(form.wrong())
                            .lines()
                            .map(String::strip)
                            .filter(line -> !line.isEmpty())
                            .toList(),
                    text(form.because()),
                    form.safety() != null));
            flash.addFlashAttribute("done", "routeknowledge.bank.written");
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "routeknowledge.refused." + ex.code());
        }
        return "redirect:/self-test/{code}/bank";
    }

    @PostMapping("/{number}/withdraw")
    String withdraw(@PathVariable String code, @PathVariable int number, RedirectAttributes flash) {
        try {
            bank.withdraw(code, number);
            flash.addFlashAttribute("done", "routeknowledge.bank.withdrawn-done");
        } catch (SectionRefusedException ex) {
            flash.addFlashAttribute("refused", "routeknowledge.refused." + ex.code());
        }
        return "redirect:/self-test/{code}/bank";
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }
}
