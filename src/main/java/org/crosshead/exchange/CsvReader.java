package org.crosshead.exchange;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads files as RFC 4180 has them: UTF-8, with or without byte-order mark, either kind of line end, a header row first. */
final class CsvReader {

    static final int ROWS_MAX = 5000;
    static final int BYTES_MAX = 2 * 1024 * 1024;

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final ProblemList problems;

    private CsvReader(ProblemList problems) {
        this.problems = problems;
    }

    static Sheets read(List<Upload> uploads, ProblemList problems) {
        CsvReader reader = new CsvReader(problems);
        Map<ImportFile, List<Line>> lines = new EnumMap<>(ImportFile.class);
        if (uploads.isEmpty()) {
            problems.refuseFile("", 0, "no-files");
        }
        for (Upload upload : uploads) {
            Optional<ImportFile> file = ImportFile.named(upload.fileName());
            if (file.isEmpty()) {
                problems.refuseFile(upload.fileName(), 0, "file-unknown", known());
            } else if (lines.containsKey(file.get())) {
                problems.refuseFile(upload.fileName(), 0, "file-twice");
            } else {
                lines.put(file.get(), reader.lines(file.get(), upload));
            }
        }
        return new Sheets(lines);
    }

    private static String known() {
        return Stream.of(ImportFile.values()).map(ImportFile::fileName).collect(Collectors.joining(", "));
    }

    private List<Line> lines(ImportFile file, Upload upload) {
        if (upload.size() > BYTES_MAX) {
            problems.refuseFile(file.fileName(), 0, "file-too-large", BYTES_MAX / (1024 * 1024));
            return List.of();
        }
        return decoded(file, upload.content().get())
                .map(text -> parsed(file, text))
                .orElseGet(List::of);
    }

    private Optional<String> decoded(ImportFile file, byte[] content) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharBuffer chars = CharBuffer.allocate(content.length + 1);
        CoderResult result = decoder.decode(bytes, chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            problems.refuseFile(file.fileName(), line, "not-utf-8");
            return Optional.empty();
        }
        return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    }

    private List<Line> parsed(ImportFile file, String text) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
            return rows(file, parser);
        } catch (IOException ex) {
            throw new UncheckedIOException("a text in memory could not be read", ex);
        }
    }

    private List<Line> rows(ImportFile file, CSVParser parser) {
        List<Line> lines = new ArrayList<>();
        long line = 1;
        try {
            Iterator<CSVRecord> records = parser.iterator();
            if (!records.hasNext()) {
                problems.refuseFile(file.fileName(), 1, "header-missing", file.header());
                return List.of();
            }
            Optional<List<String>> header = header(file, records.next());
            line = parser.getCurrentLineNumber() + 1;
            while (header.isPresent() && records.hasNext()) {
                CSVRecord row = records.next();
                if (!isBlank(row)) {
                    if (lines.size() == ROWS_MAX) {
                        problems.refuseFile(file.fileName(), (int) line, "rows-too-many", ROWS_MAX);
                        return lines;
                    }
                    line(file, (int) line, header.get(), row).ifPresent(lines::add);
                }
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException ex) {
            problems.refuseFile(file.fileName(), (int) line, "quotes");
        }
        return lines;
    }

    private static boolean isBlank(CSVRecord row) {
        return row.stream().allMatch(String::isBlank);
    }

    private Optional<List<String>> header(ImportFile file, CSVRecord row) {
        List<String> header =
                row.stream().map(cell -> cell.strip().toLowerCase(Locale.ROOT)).toList();
        int before = problems.total();
        Set<String> seen = new HashSet<>();
        for (String name : header) {
            if (file.column(name).isEmpty()) {
                problems.refuseFile(file.fileName(), 1, "column-unknown", name, file.header());
            } else if (!seen.add(name)) {
                problems.refuseFile(file.fileName(), 1, "column-twice", name);
            }
        }
        file.columns().stream()
                .filter(Column::filled)
                .map(Column::name)
                .filter(name -> !seen.contains(name))
                .forEach(name -> problems.refuseFile(file.fileName(), 1, "column-missing", name));
        return problems.total() == before ? Optional.of(header) : Optional.empty();
    }

    private Optional<Line> line(ImportFile file, int number, List<String> header, CSVRecord row) {
        if (row.size() != header.size()) {
            problems.refuseFile(file.fileName(), number, "cells", row.size(), header.size());
            return Optional.empty();
        }
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < row.size(); i++) {
            cells.put(header.get(i), row.get(i).strip());
        }
        Line line = new Line(file, number, cells);
        for (int i = 0; i < row.size(); i++) {
            String name = header.get(i);
            CellRules.check(file.column(name).orElseThrow(), row.get(i))
                    .ifPresent(refusal -> problems.refuse(
                            line, name, refusal.code(), refusal.args().toArray()));
        }
        return Optional.of(line);
    }
}
