package org.crosshead.exchange;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The lines of all files given together. */
final class Sheets {

    private final Map<ImportFile, List<Line>> lines;

    Sheets(Map<ImportFile, List<Line>> lines) {
        this.lines = new EnumMap<>(ImportFile.class);
        this.lines.putAll(lines);
    }

    /** Returns the lines of a file, none if it was not given. */
    List<Line> lines(ImportFile file) {
        return lines.getOrDefault(file, List.of());
    }

    /** Returns the lines of a file by the owner they name, refusing those whose owner is not among these. */
    Map<String, List<Line>> lines(Owned owned, Owners owners, ProblemList problems) {
        lines(owned.file()).stream()
                .filter(line -> !owners.keys().contains(owned.owner().apply(line)))
                .forEach(line -> problems.refuse(
                        line,
                        owned.column(),
                        "no-owner",
                        line.text(owned.column()),
                        owners.file().fileName()));
        return lines(owned.file()).stream()
                .collect(Collectors.groupingBy(owned.owner(), LinkedHashMap::new, Collectors.toList()));
    }

    /** A file whose lines belong to lines of another. */
    record Owned(ImportFile file, String column, Function<Line, String> owner) {

        static Owned by(ImportFile file, String column) {
            return new Owned(file, column, line -> line.text(column));
        }
    }

    /** The lines that others may belong to, each once. */
    record Owners(ImportFile file, Set<String> keys) {

        static Owners of(Sheets sheets, Owned key, ProblemList problems) {
            Map<String, Line> byKey = new LinkedHashMap<>();
            for (Line line : sheets.lines(key.file())) {
                Line first = byKey.putIfAbsent(key.owner().apply(line), line);
                if (first != null) {
                    problems.refuse(line, key.column(), "twice", line.text(key.column()), first.number());
                }
            }
            return new Owners(key.file(), Set.copyOf(byKey.keySet()));
        }
    }
}
