package org.crosshead.platform.web;

import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** After a form has been stored the browser is sent on with 303, so that it never sends the form again. */
@Configuration(proxyBeanMethods = false)
class PageConfiguration implements WebMvcConfigurer {

    PageConfiguration(ThymeleafViewResolver views) {
        views.setRedirectHttp10Compatible(false);
    }
}
