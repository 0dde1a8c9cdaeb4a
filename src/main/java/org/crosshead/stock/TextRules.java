package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Checks codes, names, remarks and reasons: present where needed, and not longer than the table holds. */
final class TextRules {

    static final int NAME_LENGTH_MAX = 120;
    static final int REASON_LENGTH_MAX = 400;
    static final int TEXT_LENGTH_MAX = 2000;

    private static final Pattern CODE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");

    private final List<StockProblem> problems = new ArrayList<>();

    static TextRules with(String reason) {
        return new TextRules().needed("reason", reason, REASON_LENGTH_MAX);
    }

    /** A code stands in addresses: letters, figures, full stop, hyphen and underscore, at most 40, and not the address "new". */
    TextRules code(String field, String code) {
        if (!CODE.matcher(code).matches() || code.equals("new")) {
            problems.add(refused(field, "code", code));
        }
        return this;
    }

    TextRules needed(String field, String text, int lengthMax) {
        if (text.isBlank()) {
            problems.add(refused(field, "needed"));
        }
        return optional(field, text, lengthMax);
    }

    TextRules optional(String field, String text, int lengthMax) {
        if (text.length() > lengthMax) {
            problems.add(refused(field, "too-long", lengthMax));
        }
        return this;
    }

    List<StockProblem> problems() {
        return problems;
    }
}
