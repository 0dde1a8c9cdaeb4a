package org.crosshead.platform.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.crosshead.platform.account.AccountRefusedException;
import org.crosshead.platform.account.LogIn;
import org.crosshead.platform.account.OwnPassword;
import org.crosshead.platform.account.PasswordChange;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The page on which one changes one's own password. */
@Controller
class PasswordController {

    private static final String PAGE = "platform/password";

    private final OwnPassword ownPassword;
    private final HttpSessionSecurityContextRepository sessions = new HttpSessionSecurityContextRepository();

    PasswordController(OwnPassword ownPassword) {
        this.ownPassword = ownPassword;
    }

    @GetMapping("/password")
    String show(@AuthenticationPrincipal @Nullable LogIn logIn, Model model) {
        return page(logIn, null, model);
    }

    @PostMapping("/password")
    String change(
            @AuthenticationPrincipal LogIn logIn,
            PasswordForm form,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model,
            RedirectAttributes after) {
        try {
            goOn(ownPassword.change(logIn, request.getRemoteAddr(), form.toChange()), request, response);
        } catch (AccountRefusedException refusal) {
            response.setStatus(HttpServletResponse.SC_UNPROCESSABLE_CONTENT);
            return page(logIn, refusal, model);
        }
        after.addFlashAttribute("done", "platform.password.done");
        return "redirect:/";
    }

    /** The session goes on with the new version of the log-in, under a new number. */
    private void goOn(Authentication renewed, HttpServletRequest request, HttpServletResponse response) {
        request.changeSessionId();
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(renewed);
        SecurityContextHolder.setContext(context);
        sessions.saveContext(context, request, response);
    }

    private static String page(@Nullable LogIn logIn, @Nullable AccountRefusedException refusal, Model model) {
        model.addAttribute("subject", logIn == null ? "" : logIn.subject());
        model.addAttribute("mustChange", logIn != null && logIn.mustChangePassword());
        model.addAttribute("problemField", refusal == null ? "" : refusal.field());
        model.addAttribute("problemCode", refusal == null ? "" : refusal.code());
        return PAGE;
    }

    /** What the form sends; a field left out counts as empty. */
    record PasswordForm(
            @Nullable String present,
            @Nullable String chosen,
            @Nullable String repeated) {

        PasswordChange toChange() {
            return new PasswordChange(text(present), text(chosen), text(repeated));
        }

        private static String text(@Nullable String typed) {
            return typed == null ? "" : typed;
        }
    }
}
