package org.crosshead.working.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.crosshead.crew.Post;
import org.crosshead.working.TrainRefusedException.Problem;
import org.crosshead.working.web.Refusals.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Words of the pages about trains, in the reader's language and by the railway's clock. */
@Component
class TrainWords {

    private static final int DECIMALS_MAX = 6;

    private final MessageSource messages;
    private final ZoneId zone;

    TrainWords(MessageSource messages, ZoneId zone) {
        this.messages = messages;
        this.zone = zone;
    }

    String of(String code, Object... args) {
        return messages.getMessage(code, args, locale());
    }

    Refusals of(List<Problem> problems) {
        return new Refusals(problems.stream().map(this::refusal).toList());
    }

    private Refusal refusal(Problem problem) {
        Object[] args = problem.args().stream().map(this::said).toArray();
        return new Refusal(Refusals.id(name(problem)), label(problem), of("train.refused." + problem.code(), args));
    }

    private Object said(Object argument) {
        if (argument instanceof Instant moment) {
            return moment(moment);
        }
        if (argument instanceof LocalDate day) {
            return day(day);
        }
        return argument instanceof Post post ? of("platform.post." + post) : argument;
    }

    private static String name(Problem problem) {
        return problem.index() < 0 ? problem.field() : problem.list() + "[" + problem.index() + "]." + problem.field();
    }

    private String label(Problem problem) {
        String field = problem.field().isEmpty() ? "" : of("train.field." + problem.field());
        return problem.index() < 0 ? field : of("train.row." + problem.list(), problem.index() + 1) + ", " + field;
    }

    String day(LocalDate day) {
        return day.format(DateTimeFormatter.ofPattern("EEEE, d MMMM yyyy", locale()));
    }

    String moment(Instant moment) {
        return moment.atZone(zone).format(DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", locale()));
    }

    /** Returns the reading of the clock, with the day where it is not the train's; empty where no time is booked. */
    String time(@Nullable Instant moment, LocalDate trainsDay) {
        if (moment == null) {
            return "";
        }
        ZonedDateTime local = moment.atZone(zone);
        String pattern = local.getSecond() == 0 ? "HH:mm" : "HH:mm:ss";
        boolean sameDay = local.toLocalDate().equals(trainsDay);
        return local.format(DateTimeFormatter.ofPattern(sameDay ? pattern : pattern + " (EEE)", locale()));
    }

    /** Returns the number with a point and no thousands, as a form takes it back; empty for none. */
    static String number(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(DECIMALS_MAX, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.toPlainString();
    }

    private static Locale locale() {
        return LocaleContextHolder.getLocale();
    }
}
