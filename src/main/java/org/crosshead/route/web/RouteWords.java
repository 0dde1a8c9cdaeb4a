package org.crosshead.route.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Words of the route pages, in the reader's language and the railway's time. */
@Component
class RouteWords {

    private final MessageSource messages;
    private final ZoneId zone;

    RouteWords(MessageSource messages, ZoneId zone) {
        this.messages = messages;
        this.zone = zone;
    }

    ZoneId zone() {
        return zone;
    }

    String of(String code, Object... args) {
        return messages.getMessage(code, args, locale());
    }

    String of(Enum<?> constant) {
        return of("route." + constant.getDeclaringClass().getSimpleName() + "." + constant.name());
    }

    String moment(Instant moment) {
        return DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", locale())
                .withZone(zone)
                .format(moment);
    }

    private static Locale locale() {
        return LocaleContextHolder.getLocale();
    }
}
