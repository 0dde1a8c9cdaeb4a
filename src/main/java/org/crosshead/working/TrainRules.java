package org.crosshead.working;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import org.crosshead.route.Direction;
import org.crosshead.working.TrainDraft.Call;
import org.crosshead.working.TrainDraft.CrewSlot;
import org.crosshead.working.TrainDraft.EngineTurn;
import org.crosshead.working.TrainDraft.Leg;
import org.crosshead.working.TrainRefusedException.Problem;
import org.jspecify.annotations.Nullable;

/** What can be said of a train from its own content and the names it refers to. Finds every problem, not only the first. */
final class TrainRules {

    static final int LEGS_MAX = 20;
    static final int CALLS_MAX = 200;
    static final int ENGINES_MAX = 4;
    static final int CREW_MAX = 20;

    private static final double PRESSURE_MAX_PSI = 320;
    private static final double PRESSURE_READ_PSI = 0.5;
    private static final int CODE_MAX = 40;
    private static final int PLACE_MAX = 80;
    private static final int REASON_MAX = 400;

    private final Known known;
    private final List<Problem> problems = new ArrayList<>();

    private TrainRules(Known known) {
        this.known = known;
    }

    /**
     * What other records hold, asked by name.
     *
     * @param formation whether the formation exists
     * @param engine whether the engine exists
     * @param person whether the person exists
     * @param pressurePsi working pressure of the engine, empty where it is not known
     * @param post whether the person of a slot, if there is one, holds the post of its role on that day
     */
    record Known(
            Predicate<String> formation,
            Predicate<String> engine,
            Function<String, OptionalDouble> pressurePsi,
            Predicate<String> person,
            BiPredicate<CrewSlot, LocalDate> post) {}

    static List<Problem> problemsOf(TrainDraft draft, Known known) {
        TrainRules rules = new TrainRules(known);
        rules.head(draft);
        rules.calls(draft);
        rules.engines(draft);
        rules.crew(draft);
        return rules.problems;
    }

    /** Returns what is wrong with the words in which a person says why. */
    static List<Problem> problemsOfReason(String reason) {
        if (reason.isBlank()) {
            return List.of(new Problem("", -1, "reason", "reason-needed", List.of()));
        }
        return reason.length() > REASON_MAX
                ? List.of(new Problem("", -1, "reason", "text-too-long", List.of(REASON_MAX)))
                : List.of();
    }

    private void head(TrainDraft draft) {
        if (draft.code().isBlank() || draft.code().length() > CODE_MAX) {
            add("", -1, "code", "code", CODE_MAX);
        }
        if (draft.title().isBlank() || draft.title().length() > 120) {
            add("", -1, "title", "title", 120);
        }
        if (draft.weather().length() > 200) {
            add("", -1, "weather", "text-too-long", 200);
        }
        String formation = draft.formationCode();
        if (formation != null && !known.formation().test(formation)) {
            add("", -1, "formationCode", "formation-unknown", formation);
        }
        count("legs", draft.legs().size(), 1, LEGS_MAX);
        count("calls", draft.calls().size(), 2, CALLS_MAX);
        count("engines", draft.engines().size(), 1, ENGINES_MAX);
        count("crew", draft.crew().size(), 0, CREW_MAX);
    }

    private void count(String list, int got, int least, int most) {
        if (got < least || got > most) {
            add(list, -1, list, "count", got, least, most);
        }
    }

    private void calls(TrainDraft draft) {
        List<Call> calls = draft.calls();
        for (int i = 0; i < calls.size(); i++) {
            callOnLeg(draft, i);
            callTimes(calls.get(i), i, calls.size());
        }
        inOrder(draft);
        if (!calls.isEmpty() && !draft.legs().isEmpty()) {
            ends(draft);
        }
    }

    private void callOnLeg(TrainDraft draft, int index) {
        Call call = draft.calls().get(index);
        if (call.place().isBlank()) {
            add("calls", index, "place", "place");
        } else if (call.place().length() > PLACE_MAX) {
            add("calls", index, "place", "text-too-long", PLACE_MAX);
        }
        if (call.legNumber() < 1 || call.legNumber() > draft.legs().size()) {
            add(
                    "calls",
                    index,
                    "legNumber",
                    "leg-unknown",
                    call.legNumber(),
                    draft.legs().size());
            return;
        }
        Leg leg = draft.legs().get(call.legNumber() - 1);
        double low = Math.min(leg.fromMeasure(), leg.toMeasure());
        double high = Math.max(leg.fromMeasure(), leg.toMeasure());
        if (!(call.atMeasure() >= low && call.atMeasure() <= high)) {
            add("calls", index, "atMeasure", "call-off-leg", call.place(), call.legNumber());
        }
    }

    private void callTimes(Call call, int index, int size) {
        boolean first = index == 0;
        boolean last = index == size - 1;
        if ((first || last) && !call.stops()) {
            add("calls", index, "stops", "ends-must-stop", call.place());
        }
        if (first && call.departure() == null) {
            add("calls", index, "departure", "departure-needed", call.place());
        }
        if (last && call.arrival() == null) {
            add("calls", index, "arrival", "arrival-needed", call.place());
        }
        if (call.takesWater() && !call.stops()) {
            add("calls", index, "takesWater", "water-needs-stop", call.place());
        }
    }

    private void inOrder(TrainDraft draft) {
        List<Call> calls = draft.calls();
        Instant last = null;
        for (int i = 0; i < calls.size(); i++) {
            Call call = calls.get(i);
            last = notBefore(last, call.arrival(), i, "arrival", call.place());
            last = notBefore(last, call.departure(), i, "departure", call.place());
            if (i > 0 && runsBackwards(draft, calls.get(i - 1), call)) {
                add("calls", i, "atMeasure", "calls-out-of-order", call.place());
            }
        }
    }

    private @Nullable Instant notBefore(
            @Nullable Instant last, @Nullable Instant next, int index, String field, String place) {
        if (next == null) {
            return last;
        }
        if (last != null && next.isBefore(last)) {
            add("calls", index, field, "time-backwards", place);
            return last;
        }
        return next;
    }

    private static boolean runsBackwards(TrainDraft draft, Call before, Call call) {
        if (call.legNumber() != before.legNumber()) {
            return call.legNumber() < before.legNumber();
        }
        if (call.legNumber() < 1 || call.legNumber() > draft.legs().size()) {
            return false;
        }
        boolean rising = draft.legs().get(call.legNumber() - 1).direction() == Direction.RISING;
        return rising ? call.atMeasure() < before.atMeasure() : call.atMeasure() > before.atMeasure();
    }

    private void ends(TrainDraft draft) {
        Call first = draft.calls().get(0);
        Call last = draft.calls().get(draft.calls().size() - 1);
        Leg firstLeg = draft.legs().get(0);
        Leg lastLeg = draft.legs().get(draft.legs().size() - 1);
        if (first.legNumber() != 1 || first.atMeasure() != firstLeg.fromMeasure()) {
            add("calls", 0, "atMeasure", "first-call-at-start", first.place());
        }
        if (last.legNumber() != draft.legs().size() || last.atMeasure() != lastLeg.toMeasure()) {
            add("calls", draft.calls().size() - 1, "atMeasure", "last-call-at-end", last.place());
        }
    }

    private void engines(TrainDraft draft) {
        Set<String> numbers = new HashSet<>();
        for (int i = 0; i < draft.engines().size(); i++) {
            EngineTurn engine = draft.engines().get(i);
            if (!known.engine().test(engine.engineNumber())) {
                add("engines", i, "engineNumber", "engine-unknown", engine.engineNumber());
            }
            if (!numbers.add(engine.engineNumber())) {
                add("engines", i, "engineNumber", "engine-twice", engine.engineNumber());
            }
            engineFigures(engine, i);
            placesKnown(draft, "engines", i, engine.fromPlace(), engine.toPlace());
        }
        if (!draft.engines().isEmpty() && draft.engines().get(0).fromPlace() != null) {
            add("engines", 0, "fromPlace", "train-engine-whole-path");
        }
    }

    private void engineFigures(EngineTurn engine, int index) {
        within(index, "pressurePsi", engine.pressurePsi(), 1, PRESSURE_MAX_PSI);
        OptionalDouble allowedPsi = known.pressurePsi().apply(engine.engineNumber());
        if (allowedPsi.isPresent() && engine.pressurePsi() > allowedPsi.getAsDouble() + PRESSURE_READ_PSI) {
            add(
                    "engines",
                    index,
                    "pressurePsi",
                    "pressure-above",
                    engine.pressurePsi(),
                    engine.engineNumber(),
                    allowedPsi.getAsDouble());
        }
        within(index, "glassShare", engine.glassShare(), 0, 1);
        if (engine.waterGallons() != null) {
            within(index, "waterGallons", engine.waterGallons(), 0, 20_000);
        }
        if (engine.coalCwt() != null) {
            within(index, "coalCwt", engine.coalCwt(), 0, 500);
        }
    }

    private void within(int index, String field, double value, double min, double max) {
        if (!(value >= min && value <= max)) {
            add("engines", index, field, "out-of-range", value, min, max);
        }
    }

    private void crew(TrainDraft draft) {
        for (int i = 0; i < draft.crew().size(); i++) {
            CrewSlot slot = draft.crew().get(i);
            if (!known.person().test(slot.staffNumber())) {
                add("crew", i, "staffNumber", "person-unknown", slot.staffNumber());
            } else if (!known.post().test(slot, draft.day())) {
                add("crew", i, "role", "post-not-held", slot.staffNumber(), slot.role(), draft.day());
            }
            if (draft.engines().stream()
                    .noneMatch(engine -> engine.engineNumber().equals(slot.engineNumber()))) {
                add("crew", i, "engineNumber", "slot-engine-unknown", slot.engineNumber());
            }
            Instant on = slot.bookOn();
            Instant off = slot.bookOff();
            if (on != null && off != null && !off.isAfter(on)) {
                add("crew", i, "bookOff", "book-off-before-on", slot.staffNumber());
            }
            placesKnown(draft, "crew", i, slot.fromPlace(), slot.toPlace());
            for (int j = 0; j < i; j++) {
                if (inTwoPlaces(draft, draft.crew().get(j), slot)) {
                    add("crew", i, "staffNumber", "person-twice", slot.staffNumber());
                    break;
                }
            }
        }
    }

    /** A person may change role or engine on the way, but does one thing at a time. */
    private static boolean inTwoPlaces(TrainDraft draft, CrewSlot one, CrewSlot other) {
        return one.staffNumber().equals(other.staffNumber())
                && callIndexOr(draft, one.fromPlace(), 0)
                        < callIndexOr(draft, other.toPlace(), draft.calls().size() - 1)
                && callIndexOr(draft, other.fromPlace(), 0)
                        < callIndexOr(draft, one.toPlace(), draft.calls().size() - 1);
    }

    private static int callIndexOr(TrainDraft draft, @Nullable String place, int end) {
        return place == null ? end : callIndex(draft, place);
    }

    private void placesKnown(
            TrainDraft draft, String list, int index, @Nullable String fromPlace, @Nullable String toPlace) {
        int from = fromPlace == null ? 0 : callIndex(draft, fromPlace);
        int to = toPlace == null ? draft.calls().size() - 1 : callIndex(draft, toPlace);
        if (from < 0) {
            add(list, index, "fromPlace", "place-not-called", String.valueOf(fromPlace));
        }
        if (to < 0) {
            add(list, index, "toPlace", "place-not-called", String.valueOf(toPlace));
        }
        if (from >= 0 && to >= 0 && (fromPlace != null || toPlace != null) && from >= to) {
            add(list, index, "toPlace", "places-out-of-order");
        }
    }

    private static int callIndex(TrainDraft draft, String place) {
        for (int i = 0; i < draft.calls().size(); i++) {
            if (draft.calls().get(i).place().equals(place)) {
                return i;
            }
        }
        return -1;
    }

    private void add(String list, int index, String field, String code, Object... args) {
        problems.add(new Problem(list, index, field, code, List.of(args)));
    }
}
