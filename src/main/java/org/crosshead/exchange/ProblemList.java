package org.crosshead.exchange;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong over all files; beyond a limit it only counts. */
final class ProblemList {

    static final int LISTED_MAX = 200;

    private final List<ImportProblem> problems = new ArrayList<>();
    private int total;
    private boolean filesBroken;

    void add(ImportProblem problem) {
        total++;
        if (problems.size() < LISTED_MAX) {
            problems.add(problem);
        }
    }

    void refuse(Line line, String column, String code, Object... args) {
        add(new ImportProblem(line.file().fileName(), line.number(), column, refused(code), List.of(args)));
    }

    /** Refuses a file or a line of it as it stands, so that what follows from it can't be judged. */
    void refuseFile(String fileName, int line, String code, Object... args) {
        filesBroken = true;
        add(new ImportProblem(fileName, line, "", refused(code), List.of(args)));
    }

    void throwIfFilesBroken() {
        if (filesBroken) {
            throw new ImportRefusedException(this);
        }
    }

    void throwIfAny() {
        if (total > 0) {
            throw new ImportRefusedException(this);
        }
    }

    List<ImportProblem> first() {
        return List.copyOf(problems);
    }

    int total() {
        return total;
    }

    private static String refused(String code) {
        return "exchange.refused." + code;
    }
}
