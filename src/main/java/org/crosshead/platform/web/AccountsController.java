package org.crosshead.platform.web;

import org.crosshead.platform.account.AccountRefusedException;
import org.crosshead.platform.account.Accounts;
import org.crosshead.platform.account.OneTimePassword;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The administrator's page of log-ins. A one-time password is shown on the next page only. */
@Controller
@RequestMapping("/accounts")
class AccountsController {

    private static final String BACK = "redirect:/accounts";

    private final Accounts accounts;

    AccountsController(Accounts accounts) {
        this.accounts = accounts;
    }

    @GetMapping
    String show(Model model) {
        return page(new AccountForm("", null), model);
    }

    @PostMapping
    String make(AccountForm form, Model model, RedirectAttributes after) {
        try {
            after.addFlashAttribute("made", accounts.make(form.subjectText(), form.personNumber()));
        } catch (AccountRefusedException refusal) {
            model.addAttribute("problemField", refusal.field());
            model.addAttribute("problemCode", refusal.code());
            return page(form, model);
        }
        after.addFlashAttribute("done", "platform.accounts.made");
        return BACK;
    }

    @PostMapping("/{id}/reset")
    String reset(@PathVariable long id, RedirectAttributes after) {
        try {
            OneTimePassword password = accounts.reset(id);
            after.addFlashAttribute("made", password);
            after.addFlashAttribute("done", "platform.accounts.reset.done");
        } catch (AccountRefusedException refusal) {
            after.addFlashAttribute("problemCode", refusal.code());
        }
        return BACK;
    }

    @PostMapping("/{id}/lock")
    String lock(@PathVariable long id, @RequestParam boolean locked, RedirectAttributes after) {
        try {
            if (locked) {
                accounts.lock(id);
            } else {
                accounts.unlock(id);
            }
            after.addFlashAttribute("done", locked ? "platform.accounts.lock.done" : "platform.accounts.unlock.done");
        } catch (AccountRefusedException refusal) {
            after.addFlashAttribute("problemCode", refusal.code());
        }
        return BACK;
    }

    private String page(AccountForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("accounts", accounts.all());
        model.addAttribute("people", accounts.peopleWithoutLogIn());
        return "platform/accounts";
    }

    /** What the form for a new log-in sends; a field left out is null. */
    record AccountForm(@Nullable String subject, @Nullable Long personId) {

        String subjectText() {
            return subject == null ? "" : subject;
        }

        long personNumber() {
            return personId == null ? 0 : personId;
        }
    }
}
