package org.crosshead.working.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Collections;
import java.util.regex.Pattern;
import org.crosshead.platform.web.FormAnswer;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.server.ResponseStatusException;

/** Tells the pages about trains whether the reader may change what they show; the service checks it again. */
@ControllerAdvice(basePackageClasses = TrainPagesAdvice.class)
class TrainPagesAdvice {

    private static final Pattern ROW = Pattern.compile("^\\w{1,20}\\[(\\d{1,9})]");
    private static final int ROWS_MOST = 250;

    @ModelAttribute("mayEdit")
    boolean mayEdit(HttpServletRequest request) {
        return request.isUserInRole("INSPECTOR") || request.isUserInRole("MANAGER");
    }

    /** The forms are records, made whole from what was sent; nothing is set on them afterwards. */
    @InitBinder("form")
    void makeWhole(WebDataBinder binder, HttpServletRequest request) {
        binder.setDeclarativeBinding(true);
        boolean far = Collections.list(request.getParameterNames()).stream()
                .map(ROW::matcher)
                .anyMatch(matcher -> matcher.find() && Integer.parseInt(matcher.group(1)) > ROWS_MOST);
        if (far) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "a form has at most " + ROWS_MOST + " rows");
        }
    }

    /** The token of a form may need a session, which can't be begun once a long page has begun to go out. */
    @ModelAttribute
    void tokenBeforeThePage(HttpServletRequest request) {
        if (mayEdit(request) && request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token) {
            token.getToken();
        }
    }

    @ModelAttribute
    void statusAfterPost(HttpServletRequest request, HttpServletResponse response) {
        FormAnswer.prepare(request, response);
    }
}
