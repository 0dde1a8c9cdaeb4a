package org.crosshead.competence.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads what was typed into the fields of these forms. */
final class Typed {

    private Typed() {}

    /** Returns a text without blanks around it; empty where nothing was sent. */
    static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    /** Returns a day, or null where nothing was typed; what is no day is refused with the exception given. */
    static @Nullable LocalDate dayOrNull(@Nullable String typed, Supplier<RuntimeException> refusal) {
        return text(typed).isEmpty() ? null : day(typed, refusal);
    }

    /** Returns a day; what is none is refused with the exception given. */
    static LocalDate day(@Nullable String typed, Supplier<RuntimeException> refusal) {
        try {
            return LocalDate.parse(text(typed));
        } catch (DateTimeParseException ex) {
            throw refusal.get();
        }
    }

    /** Returns a whole number of up to three figures, 0 where nothing was typed; another is refused with the exception given. */
    static int count(@Nullable String typed, Supplier<RuntimeException> refusal) {
        if (!text(typed).matches("[0-9]{0,3}")) {
            throw refusal.get();
        }
        return text(typed).isEmpty() ? 0 : Integer.parseInt(text(typed));
    }
}
