package org.crosshead.stock.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.crosshead.platform.web.FormAnswer;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells the stock pages whether the reader may change what they show; the services check it again. */
@ControllerAdvice(basePackageClasses = EditorsAdvice.class)
class EditorsAdvice {

    @ModelAttribute("mayEdit")
    boolean mayEdit(HttpServletRequest request) {
        return request.isUserInRole("INSPECTOR");
    }

    @ModelAttribute
    void statusAfterPost(HttpServletRequest request, HttpServletResponse response) {
        FormAnswer.prepare(request, response);
    }
}
