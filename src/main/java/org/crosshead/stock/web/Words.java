package org.crosshead.stock.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.crosshead.stock.StockProblem;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Words of the stock pages, in the reader's language. */
@Component
class Words {

    private static final Pattern ROW = Pattern.compile("(items|notes)\\[(\\d+)]\\.(.+)");

    private final MessageSource messages;
    private final ZoneId zone;

    Words(MessageSource messages, ZoneId zone) {
        this.messages = messages;
        this.zone = zone;
    }

    String of(String code, Object... args) {
        return messages.getMessage(code, args, LocaleContextHolder.getLocale());
    }

    String day(Instant moment) {
        return DateTimeFormatter.ofPattern("d MMMM yyyy", locale())
                .withZone(zone)
                .format(moment);
    }

    List<FormProblem> of(List<StockProblem> problems) {
        return problems.stream()
                .map(problem -> new FormProblem(
                        problem.field(),
                        label(problem.field()),
                        of(problem.code(), problem.args().toArray())))
                .toList();
    }

    /** Returns what a field is called on its form. */
    private String label(String field) {
        if (field.startsWith(FigureRow.PREFIX)) {
            return otherwise("stock.figure." + field.substring(FigureRow.PREFIX.length()), field);
        }
        Matcher row = ROW.matcher(field);
        return row.matches()
                ? of("stock.row." + row.group(1), Integer.parseInt(row.group(2)) + 1, label(row.group(3)))
                : otherwise("stock.field." + field, field);
    }

    private String otherwise(String code, String words) {
        String found = messages.getMessage(code, null, words, locale());
        return found == null ? words : found;
    }

    private static Locale locale() {
        return LocaleContextHolder.getLocale();
    }

    /** A problem in words beside its field. */
    record FormProblem(String field, String label, String text) {

        /** Returns the id of the field that it stands beside. */
        public String id() {
            return id(field);
        }

        static String id(String field) {
            return field.replaceAll("[\\[\\].]+", "-");
        }
    }
}
