package org.crosshead.load.web;

import java.util.List;
import java.util.Locale;
import org.crosshead.load.LoadAnswer;
import org.crosshead.load.LoadAnswer.Limit;
import org.crosshead.load.LoadAnswer.Stopped;
import org.crosshead.load.web.LoadsController.Words;
import org.jspecify.annotations.Nullable;

/** An answer in words ready to show. */
record LoadPage(List<SectionRow> sections, List<RunRow> runs, List<String> lacks) {

    private static final double TONS_STEP = 5;

    LoadPage {
        sections = List.copyOf(sections);
        runs = List.copyOf(runs);
        lacks = List.copyOf(lacks);
    }

    /** One section; a limit as how much, and what stops more. */
    record SectionRow(String section, Cell started, Cell steady, Cell worked) {}

    /** A figure and what stands below it. */
    record Cell(String figure, String further) {}

    record RunRow(String load, String time, Cell slowest, Cell lowest, String stopped) {}

    static LoadPage of(LoadAnswer answer, Words words) {
        if (answer instanceof LoadAnswer.Missing missing) {
            return new LoadPage(
                    List.of(),
                    List.of(),
                    missing.lacks().stream().map(lack -> lack(lack, words)).toList());
        }
        LoadAnswer.Known known = (LoadAnswer.Known) answer;
        return new LoadPage(
                known.sections().stream().map(section -> row(section, words)).toList(),
                known.runs().stream().map(run -> row(run, words)).toList(),
                List.of());
    }

    private static String lack(LoadAnswer.Lack lack, Words words) {
        String figure = lack.figure().isEmpty() ? "" : words.figure(lack.figure());
        return words.of("load.missing." + lack.code(), lack.subject(), figure);
    }

    private static SectionRow row(LoadAnswer.Section section, Words words) {
        return new SectionRow(
                words.of("load.section", section.from(), section.to()),
                cell(section.started(), words),
                cell(section.steady(), words),
                cell(section.worked(), words));
    }

    private static Cell cell(Limit limit, Words words) {
        Stopped stopped = limit.stopped();
        return stopped == null
                ? new Cell(words.of("load.at-least", limit.vehicles(), tons(limit.tons())), "")
                : new Cell(words.of("load.tons", limit.vehicles(), tons(limit.tons())), stopped(stopped, words));
    }

    private static RunRow row(LoadAnswer.Run run, Words words) {
        Double minutes = run.minutes();
        return new RunRow(
                words.of("load.tons", run.vehicles(), tons(run.tons())),
                minutes == null ? words.of("load.not-there") : words.of("load.minutes", time(minutes)),
                new Cell(
                        words.of("load.mph", rounded(run.slowest().value())),
                        run.slowest().place()),
                new Cell(
                        words.of("load.psi", rounded(run.lowest().value())),
                        run.lowest().place()),
                stopped(run.stopped(), words));
    }

    private static String stopped(@Nullable Stopped stopped, Words words) {
        return stopped == null ? "" : words.of("load.what." + stopped.what().name(), stopped.place());
    }

    /** Rounded down to five tons: the safer way. */
    private static String tons(double tons) {
        return String.format(Locale.UK, "%,.0f", Math.floor(tons / TONS_STEP) * TONS_STEP);
    }

    private static String rounded(double value) {
        return String.format(Locale.UK, "%,.0f", Math.floor(value));
    }

    private static String time(double minutes) {
        long whole = Math.round(minutes);
        return whole / 60 + ":" + String.format(Locale.UK, "%02d", whole % 60);
    }
}
