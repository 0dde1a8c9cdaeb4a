package org.crosshead.route;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.crosshead.platform.Origin;

/** Collects what is wrong with a draft, each problem under the entry that is being checked. */
final class Problems {

    static final int NAME_LENGTH_MAX = 120;
    static final int SHORT_NAME_LENGTH_MAX = 60;
    static final int DETAIL_LENGTH_MAX = 200;
    static final int NOTE_LENGTH_MAX = 400;

    private static final Pattern CODE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    /** Taken by the address of the form for a new one. */
    private static final String CODE_TAKEN = "new";

    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    private final List<RouteProblem> found = new ArrayList<>();
    private String list = "";
    private int index = -1;

    /** Makes what follows belong to this entry. */
    Problems at(String newList, int newIndex) {
        list = newList;
        index = newIndex;
        return this;
    }

    Problems refuse(String field, String code, Object... args) {
        found.add(new RouteProblem(list, index, field, "route.refused." + code, List.of(args)));
        return this;
    }

    boolean refuseIf(boolean wrong, String field, String code, Object... args) {
        if (wrong) {
            refuse(field, code, args);
        }
        return wrong;
    }

    /** A code stands in addresses: letters, figures, full stop, hyphen and underscore, at most 40. */
    Problems code(String field, String code) {
        refuseIf(!CODE.matcher(code).matches() || code.equals(CODE_TAKEN), field, "code", code);
        return this;
    }

    /** A name stands in lists whose fields are parted by semicolons. */
    Problems name(String field, String name, int lengthMax) {
        refuseIf(name.isBlank(), field, "needed");
        return optionalName(field, name, lengthMax);
    }

    Problems optionalName(String field, String name, int lengthMax) {
        refuseIf(name.indexOf(';') >= 0, field, "semicolon");
        return text(field, name, lengthMax);
    }

    /** Remarks of one line; anything else in them is only text. */
    Problems text(String field, String text, int lengthMax) {
        refuseIf(text.length() > lengthMax, field, "too-long", lengthMax);
        refuseIf(CONTROL.matcher(text).find(), field, "one-line");
        return this;
    }

    Problems reason(String reason) {
        refuseIf(reason.isBlank(), "reason", "needed");
        return text("reason", reason, NOTE_LENGTH_MAX);
    }

    /** An estimate says by which rule it was made. */
    Problems origin(Origin origin, String note) {
        refuseIf(origin == Origin.ESTIMATED && note.isBlank(), "note", "rule-missing");
        return text("note", note, NOTE_LENGTH_MAX);
    }

    /** A limit of speed: above 0, and not more than any train of this service runs. */
    Problems limit(double limit, SpeedUnit unit) {
        double max = unit == SpeedUnit.MPH ? 150 : 250;
        refuseIf(!(limit > 0 && limit <= max), "limit", "limit", limit, max);
        return this;
    }

    List<RouteProblem> found() {
        return List.copyOf(found);
    }
}
