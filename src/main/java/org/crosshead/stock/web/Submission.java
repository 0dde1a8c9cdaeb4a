package org.crosshead.stock.web;

import java.util.List;
import org.crosshead.stock.StockChangedException;
import org.crosshead.stock.StockProblem;
import org.crosshead.stock.StockRefusedException;
import org.crosshead.stock.web.Words.FormProblem;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Sends a form's draft to its service, and turns a refusal into words beside the fields. */
final class Submission {

    private Submission() {}

    /**
     * Returns what was wrong; empty when it was stored.
     *
     * @param unreadable what could not even be read; if there is any, nothing is sent
     */
    static List<FormProblem> send(EditForm form, List<StockProblem> unreadable, Words words, Runnable change) {
        if (!unreadable.isEmpty()) {
            return words.of(unreadable);
        }
        try {
            change.run();
            return List.of();
        } catch (StockRefusedException ex) {
            return words.of(ex.problems());
        } catch (StockChangedException ex) {
            return words.of(List.of(
                    form.fresh()
                            ? problem(form.keyField(), "exists-already", ex.code())
                            : problem("reason", "changed-meanwhile", ex.code())));
        }
    }

    /** Accepts an estimate; returns what was wrong, empty when it counts from now on. */
    static List<FormProblem> accept(String figureKey, Words words, Runnable change) {
        try {
            change.run();
            return List.of();
        } catch (StockRefusedException ex) {
            return words.of(ex.problems());
        } catch (StockChangedException ex) {
            return words.of(List.of(problem(FigureRow.PREFIX + figureKey, "changed-meanwhile", ex.code())));
        }
    }

    /** Says once, on the page that is got next, what was done. */
    static String done(String code, String address, RedirectAttributes next) {
        next.addFlashAttribute("done", "stock.done." + code);
        return "redirect:" + address;
    }

    private static StockProblem problem(String field, String code, String about) {
        return new StockProblem(field, "stock.refused." + code, List.of(about));
    }
}
