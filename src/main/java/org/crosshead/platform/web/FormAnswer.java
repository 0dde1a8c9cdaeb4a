package org.crosshead.platform.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.View;

/** How the service answers a sent form: one that comes back as a page was refused, one that was stored says where to look. */
public final class FormAnswer {

    private FormAnswer() {}

    /** Sets both answers beforehand, for controllers whose refused forms are plain pages. */
    public static void prepare(HttpServletRequest request, HttpServletResponse response) {
        if (HttpMethod.POST.matches(request.getMethod())) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            request.setAttribute(View.RESPONSE_STATUS_ATTRIBUTE, HttpStatus.SEE_OTHER);
        }
    }
}
