package org.crosshead.platform.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** Opens every page that needs no number in its address, with nothing stored yet, and looks for what each must have. */
@SpringBootTest
@AutoConfigureMockMvc
class EveryPageTests {

    /** What the browser would refuse under the Content-Security-Policy. */
    private static final Pattern INLINE =
            Pattern.compile("(?s)\\sstyle=\"|<style|\\son[a-z]+=\"|<script(?![^>]*\\ssrc=)");

    private static final Pattern HEADING = Pattern.compile("<h1[\\s>]");

    /** How a message looks that no file has: ??code_en_GB??. */
    private static final Pattern MISSING_WORDS = Pattern.compile("\\?\\?[\\w.-]+\\?\\?");

    @Autowired
    private MockMvc mvc;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping handlers;

    @Test
    void hasOneHeadingTheCautionAndNothingInline() throws Exception {
        List<String> faults = new ArrayList<>();
        Set<String> paths = paths();
        for (String path : paths) {
            faults.addAll(faults(path));
        }

        assertThat(paths).contains("/", "/login", "/journal", "/accounts");
        assertThat(faults).isEmpty();
    }

    private List<String> faults(String path) throws Exception {
        MockHttpServletResponse response = mvc.perform(get(path)
                        .accept(MediaType.TEXT_HTML)
                        .with(user("somebody")
                                .roles("DRIVER", "FIREMAN", "INSPECTOR", "MANAGER", "ASSESSOR", "ADMINISTRATOR")))
                .andReturn()
                .getResponse();
        String type = String.valueOf(response.getContentType());
        if (response.getStatus() != 200) {
            return List.of(path + " answers " + response.getStatus());
        }
        return type.startsWith("text/html") ? faults(path, response.getContentAsString()) : List.of();
    }

    private static List<String> faults(String path, String body) {
        List<String> faults = new ArrayList<>();
        INLINE.matcher(body).results().forEach(found -> faults.add(path + " has inline" + found.group()));
        MISSING_WORDS.matcher(body).results().forEach(found -> faults.add(path + " lacks words " + found.group()));
        if (HEADING.matcher(body).results().count() != 1) {
            faults.add(path + " has not one heading");
        }
        if (!body.contains("class=\"caution\"")) {
            faults.add(path + " lacks the caution");
        }
        return faults;
    }

    private Set<String> paths() {
        Set<String> paths = new TreeSet<>();
        handlers.getHandlerMethods().keySet().stream()
                .filter(mapping -> mapping.getMethodsCondition().getMethods().contains(RequestMethod.GET))
                .flatMap(mapping -> mapping.getPatternValues().stream())
                .filter(pattern -> !pattern.contains("{"))
                .forEach(paths::add);
        return paths;
    }
}
