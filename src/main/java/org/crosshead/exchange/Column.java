package org.crosshead.exchange;

import java.util.List;
import java.util.stream.Stream;

/**
 * A column of a file that can be imported.
 *
 * @param filled whether its cells must not be empty; a file may leave out a column whose cells may be
 * @param words what a cell may hold, for a column of words; empty otherwise
 */
public record Column(String name, CellKind kind, boolean filled, List<String> words) {

    public Column {
        words = List.copyOf(words);
    }

    static Column needed(String name, CellKind kind) {
        return new Column(name, kind, true, List.of());
    }

    static Column optional(String name, CellKind kind) {
        return new Column(name, kind, false, List.of());
    }

    static Column neededWord(String name, Class<? extends Enum<?>> words) {
        return new Column(name, CellKind.WORD, true, words(words));
    }

    static Column optionalWord(String name, Class<? extends Enum<?>> words) {
        return new Column(name, CellKind.WORD, false, words(words));
    }

    private static List<String> words(Class<? extends Enum<?>> words) {
        return Stream.of(words.getEnumConstants()).map(Enum::name).toList();
    }
}
