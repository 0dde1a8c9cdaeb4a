package org.crosshead.briefing.web;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.springframework.context.MessageSource;

/** The words of the strip, by their codes in messages/strip. */
@FunctionalInterface
public interface RoadWords {

    /** Returns the words of a code with the arguments in their places. */
    String say(String code, Object... arguments);

    /** Words in the language of the reader. */
    static RoadWords of(MessageSource messages, Locale locale) {
        return (code, arguments) -> messages.getMessage(code, arguments, locale);
    }

    /**
     * The words as they are packed.
     *
     * @throws MissingResourceException when a code is asked for that has none
     */
    static RoadWords packed() {
        ResourceBundle bundle = ResourceBundle.getBundle("messages/strip", Locale.ROOT);
        return (code, arguments) -> new MessageFormat(bundle.getString(code), Locale.ROOT).format(arguments);
    }
}
