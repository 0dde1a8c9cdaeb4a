package org.crosshead.stock.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.web.util.HtmlUtils;

/** The fields of a page, read as a browser would. */
record FormMarkup(String page) {

    private static final Pattern TAG = Pattern.compile("<(input|select|textarea)\\b[^>]*>(?:([^<]*)</textarea>)?");
    private static final Pattern SELECT = Pattern.compile("(?s)(<select\\b[^>]*>)(.*?)</select>");
    private static final Pattern OPTION = Pattern.compile("<option\\b[^>]*>");

    static FormMarkup of(String page) {
        return new FormMarkup(page);
    }

    List<String> ids() {
        return found("\\sid=\"([^\"]*)\"");
    }

    List<String> labelled() {
        return found("<label for=\"([^\"]*)\"");
    }

    /** Returns the ids of the fields that a person fills; a field without one stands as an empty text. */
    List<String> fields() {
        return TAG.matcher(page)
                .results()
                .map(MatchResult::group)
                .filter(tag -> !attribute(tag, "type").equals("hidden"))
                .map(tag -> attribute(tag, "id"))
                .toList();
    }

    Form form() {
        Map<String, String> fields = new HashMap<>();
        TAG.matcher(page).results().forEach(tag -> {
            String name = attribute(tag.group(), "name");
            if (tag.group(1).equals("textarea")) {
                fields.put(name, HtmlUtils.htmlUnescape(tag.group(2)));
            } else if (tag.group(1).equals("input") && sent(tag.group())) {
                fields.put(name, attribute(tag.group(), "value"));
            }
        });
        SELECT.matcher(page)
                .results()
                .forEach(select -> fields.put(attribute(select.group(1), "name"), chosen(select.group(2))));
        return new Form(fields);
    }

    private static boolean sent(String input) {
        return !attribute(input, "type").equals("checkbox") || input.contains("checked");
    }

    private static String chosen(String options) {
        List<String> all =
                OPTION.matcher(options).results().map(MatchResult::group).toList();
        return all.stream()
                .filter(option -> option.contains("selected"))
                .findFirst()
                .or(() -> all.stream().findFirst())
                .map(option -> attribute(option, "value"))
                .orElse("");
    }

    private static String attribute(String tag, String name) {
        Matcher attribute = Pattern.compile("\\s" + name + "=\"([^\"]*)\"").matcher(tag);
        return attribute.find() ? HtmlUtils.htmlUnescape(attribute.group(1)) : "";
    }

    private List<String> found(String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(match -> match.group(1))
                .toList();
    }
}
