package org.crosshead.stock.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.servlet.View;

/** Tells the stock pages whether the reader may change what they show; the services check it again. */
@ControllerAdvice(basePackageClasses = EditorsAdvice.class)
class EditorsAdvice {

    @ModelAttribute("mayEdit")
    boolean mayEdit(HttpServletRequest request) {
        return request.isUserInRole("INSPECTOR");
    }

    /** A sent form that comes back as a page was refused; one that was stored says where to look. */
    @ModelAttribute
    void statusAfterPost(HttpServletRequest request, HttpServletResponse response) {
        if (HttpMethod.POST.matches(request.getMethod())) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            request.setAttribute(View.RESPONSE_STATUS_ATTRIBUTE, HttpStatus.SEE_OTHER);
        }
    }
}
