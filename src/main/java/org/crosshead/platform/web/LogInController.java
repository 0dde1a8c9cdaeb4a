package org.crosshead.platform.web;

import java.util.List;
import org.crosshead.platform.account.DemonstrationAccounts;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page on which one logs in, and the one on which one leaves. */
@Controller
class LogInController {

    private final ObjectProvider<DemonstrationAccounts> demonstration;

    LogInController(ObjectProvider<DemonstrationAccounts> demonstration) {
        this.demonstration = demonstration;
    }

    @GetMapping("/login")
    String logIn(Model model) {
        DemonstrationAccounts accounts = demonstration.getIfAvailable();
        model.addAttribute("demonstrationAccounts", accounts == null ? List.of() : accounts.all());
        model.addAttribute("demonstrationPassword", accounts == null ? "" : DemonstrationAccounts.PASSWORD);
        return "platform/login";
    }

    @GetMapping("/logout")
    String logOut() {
        return "platform/logout";
    }
}
