package org.crosshead.kernel.figure;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Arithmetic as {@link Step#expression} writes it: numbers, symbols, {@code + - * / ^ ( )}, and the functions {@code sqrt ceil floor}
 * of one and {@code min max} of two or more arguments. Written apart from the code under test, so that it can be wrong only by itself.
 */
public final class Expression {

    private static final Set<String> FUNCTIONS = Set.of("sqrt", "min", "max", "ceil", "floor");

    private final String text;
    private final Map<String, Double> symbols;
    private final Set<String> used = new TreeSet<>();
    private int at;

    private Expression(String text, Map<String, Double> symbols) {
        this.text = text;
        this.symbols = symbols;
    }

    /** Returns the value; an unknown symbol or a stray character is an {@link IllegalArgumentException} naming the place. */
    public static double value(String text, Map<String, Double> symbols) {
        return new Expression(text, symbols).whole();
    }

    /** Returns the symbols that the expression uses, in alphabetical order. */
    public static List<String> symbols(String text, Map<String, Double> symbols) {
        Expression expression = new Expression(text, symbols);
        expression.whole();
        return List.copyOf(expression.used);
    }

    private double whole() {
        double value = sum();
        if (next() != 0) {
            throw wrong("unexpected '" + next() + "'");
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (next() == '+' || next() == '-') {
            value = take() == '+' ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        double value = signed();
        while (next() == '*' || next() == '/') {
            value = take() == '*' ? value * signed() : value / signed();
        }
        return value;
    }

    private double signed() {
        if (next() == '-') {
            take();
            return -signed();
        }
        return power();
    }

    /** Binds to the right and tighter than a sign before it: -2^2 is -4, 2^-1 is a half. */
    private double power() {
        double base = atom();
        if (next() == '^') {
            take();
            return Math.pow(base, signed());
        }
        return base;
    }

    private double atom() {
        char c = next();
        if (c == '(') {
            take();
            double value = sum();
            expect(')');
            return value;
        }
        if (Character.isDigit(c) || c == '.') {
            return number();
        }
        if (Character.isLetter(c)) {
            return word();
        }
        throw wrong(c == 0 ? "unexpected end" : "unexpected '" + c + "'");
    }

    private double number() {
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
                at++;
            }
            while (at < text.length() && Character.isDigit(text.charAt(at))) {
                at++;
            }
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private double word() {
        int from = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        String word = text.substring(from, at);
        if (next() == '(' && FUNCTIONS.contains(word)) {
            return function(word);
        }
        Double value = symbols.get(word);
        if (value == null) {
            throw wrong("unknown symbol " + word);
        }
        used.add(word);
        return value;
    }

    private double function(String name) {
        take();
        double value = of(name, sum());
        int count = 1;
        while (next() == ',') {
            take();
            double other = sum();
            value = name.equals("min") ? Math.min(value, other) : Math.max(value, other);
            count++;
        }
        expect(')');
        boolean several = name.equals("min") || name.equals("max");
        if (several != count > 1) {
            throw wrong(name + " with " + count + " arguments");
        }
        return value;
    }

    private static double of(String name, double argument) {
        return switch (name) {
            case "sqrt" -> Math.sqrt(argument);
            case "ceil" -> Math.ceil(argument);
            case "floor" -> Math.floor(argument);
            default -> argument;
        };
    }

    /** Returns the next character that is not blank, or 0 at the end. */
    private char next() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() ? text.charAt(at) : 0;
    }

    private char take() {
        char c = next();
        at++;
        return c;
    }

    private void expect(char wanted) {
        if (next() != wanted) {
            throw wrong("expected '" + wanted + "'");
        }
        at++;
    }

    private IllegalArgumentException wrong(String what) {
        return new IllegalArgumentException(what + " at " + at + " in \"" + text + "\"");
    }
}
