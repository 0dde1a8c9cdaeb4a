package org.crosshead.route.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.crosshead.platform.Origin;
import org.crosshead.route.MeasureUnit;
import org.crosshead.route.Measures;
import org.jspecify.annotations.Nullable;

/**
 * One line of a list as typed: fields parted by semicolons, the last of which may hold semicolons of its own. Reads the fields
 * and collects what can't be read; a value that stands in for one that could not is never stored.
 */
final class Entry {

    private final List<String> fields;
    private final MeasureUnit unit;
    private final List<Unreadable> problems = new ArrayList<>();

    /** A field that can't be read, with the arguments of its message. */
    record Unreadable(String code, List<Object> args) {}

    Entry(String line, int fieldCount, MeasureUnit unit) {
        this.fields =
                Arrays.stream(line.split(";", fieldCount)).map(String::trim).toList();
        this.unit = unit;
    }

    static String line(Object... fields) {
        return Arrays.stream(fields)
                .map(Object::toString)
                .collect(Collectors.joining("; "))
                .stripTrailing();
    }

    List<Unreadable> problems() {
        return problems;
    }

    String text(int field) {
        return field < fields.size() ? fields.get(field) : "";
    }

    double measure(int field) {
        return Measures.parse(text(field), unit).orElseGet(() -> {
            refuse("measure-unreadable." + unit, text(field));
            return 0.0;
        });
    }

    @Nullable
    Double measureIfAny(int field) {
        return text(field).isEmpty() ? null : Double.valueOf(measure(field));
    }

    /** A number with its unit, for example {@code 40 chains}; an empty field is none. */
    <U extends Enum<U>> Optional<Quantity<U>> quantity(int field, Class<U> units) {
        if (text(field).isEmpty()) {
            return Optional.empty();
        }
        String[] parts = text(field).split("\\s+", 2);
        Optional<Double> number = Numbers.decimal(parts[0]);
        Optional<U> named = parts.length < 2 ? Optional.empty() : named(parts[1], units);
        if (number.isEmpty() || named.isEmpty()) {
            refuse("quantity", text(field), words(units));
            return Optional.empty();
        }
        return Optional.of(new Quantity<>(number.get(), named.get()));
    }

    /** As {@link #quantity}, of a field that may not be empty. */
    <U extends Enum<U>> Quantity<U> quantityNeeded(int field, Class<U> units) {
        if (text(field).isEmpty()) {
            refuse("quantity", "", words(units));
        }
        return quantity(field, units).orElseGet(() -> new Quantity<>(0, units.getEnumConstants()[0]));
    }

    /** A word out of a few; an empty field gives {@code otherwise}. */
    <E extends Enum<E>> E choice(int field, E otherwise) {
        return text(field).isEmpty() ? otherwise : choiceNeeded(field, otherwise.getDeclaringClass());
    }

    <E extends Enum<E>> E choiceNeeded(int field, Class<E> type) {
        return named(text(field), type).orElseGet(() -> {
            refuse("choice", text(field), words(type));
            return type.getEnumConstants()[0];
        });
    }

    /** Where nothing is said, the origin is unknown. */
    Origin origin(int field) {
        return choice(field, Origin.UNKNOWN);
    }

    void refuse(String code, Object... args) {
        problems.add(new Unreadable("route.refused." + code, List.of(args)));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String words(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(Entry::word).collect(Collectors.joining(", "));
    }

    private static <E extends Enum<E>> Optional<E> named(String word, Class<E> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(one -> word(one).equalsIgnoreCase(word))
                .findFirst();
    }

    /** A number with its unit. */
    record Quantity<U extends Enum<U>>(double number, U unit) {

        static String typed(@Nullable Double number, @Nullable Enum<?> unit) {
            return number == null || unit == null ? "" : Numbers.typed(number) + " " + word(unit);
        }
    }
}
