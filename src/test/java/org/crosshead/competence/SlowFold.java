package org.crosshead.competence;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Holding.State;
import org.crosshead.routeknowledge.Closure;
import org.jspecify.annotations.Nullable;

/** The same rules told day by day, as a clerk would keep a card: each morning it is seen whether the knowledge has lapsed. */
final class SlowFold {

    private final int lapseMonths;
    private final int assessmentMonths;
    private final int warnDays;
    private String card = "nothing";
    private boolean stoodOff;
    private boolean questions;
    private boolean practice;
    private @Nullable LocalDate lastGood;
    private @Nullable LocalDate byAssessment;
    private final Set<String> limits = new TreeSet<>();

    private final List<Closure> closures;
    private boolean taughtSinceClosing;
    private boolean toBeTaught;

    SlowFold(int lapseMonths, int assessmentMonths, int warnDays, List<Closure> closures) {
        this.closures = closures;
        this.lapseMonths = lapseMonths;
        this.assessmentMonths = assessmentMonths;
        this.warnDays = warnDays;
    }

    void day(LocalDate day, List<CompetenceEvent> events) {
        if (card.equals("held") && day.isAfter(end())) {
            card = "lapsed";
        }
        for (Closure closure : closures) {
            taughtSinceClosing &= !day.equals(closure.from());
            if (day.equals(closure.reopenedOn()) && closure.learnAnew()) {
                toBeTaught = !taughtSinceClosing;
            }
        }
        events.stream()
                .filter(event -> event.day().equals(day))
                .sorted(Comparator.comparing(CompetenceEvent::id))
                .forEach(this::write);
    }

    private LocalDate end() {
        LocalDate work = lastGood == null ? LocalDate.MIN : lastGood;
        LocalDate assessment = byAssessment == null ? LocalDate.MAX : byAssessment;
        return work.isBefore(assessment) ? work : assessment;
    }

    private void write(CompetenceEvent event) {
        boolean held = card.equals("held");
        LocalDate then = event.day().plusMonths(lapseMonths);
        Kind kind = event.kind();
        if (kind == Kind.WORKED && held && (lastGood == null || then.isAfter(lastGood))) {
            lastGood = then;
        }
        if (kind == Kind.LEARNED || kind == Kind.PROVED) {
            taughtSinceClosing = true;
            toBeTaught = false;
        }
        if (kind == Kind.LEARNED && !held) {
            card = "learning";
        }
        if (kind == Kind.DECLARED && !held) {
            card = "declared";
            questions = false;
            practice = false;
        }
        if (kind == Kind.QUESTIONS_PASSED || kind == Kind.PRACTICE_PASSED) {
            questions |= kind == Kind.QUESTIONS_PASSED;
            practice |= kind == Kind.PRACTICE_PASSED;
            if (held) {
                byAssessment = practice ? event.day().plusMonths(assessmentMonths) : byAssessment;
                practice = false;
                questions = false;
            } else if (card.equals("assessed")) {
                byAssessment = practice ? event.day().plusMonths(assessmentMonths) : byAssessment;
                practice = false;
                questions = false;
            } else if (card.equals("declared") && questions && practice) {
                practice = false;
                questions = false;
                card = "assessed";
                byAssessment = event.day().plusMonths(assessmentMonths);
            }
        }
        if (kind == Kind.QUESTIONS_FAILED || kind == Kind.PRACTICE_FAILED) {
            card = "learning";
            questions = false;
            practice = false;
        }
        boolean brought = kind == Kind.TAKEN_OVER || kind == Kind.CARRIED_OVER;
        if ((kind == Kind.AUTHORISED && card.equals("assessed")) || brought) {
            card = "held";
            toBeTaught = false;
            limits.clear();
            lastGood = then;
            questions = false;
            practice = false;
            byAssessment = brought ? event.day().plusMonths(assessmentMonths) : byAssessment;
        }
        if (kind == Kind.WITHDRAWN || kind == Kind.HANDED_BACK || kind == Kind.LIMITS_LIFTED) {
            limits.clear();
        }
        if (kind == Kind.DAY_ONLY || kind == Kind.CHIMNEY_FIRST_ONLY || kind == Kind.WITH_TEACHER_ONLY) {
            limits.add(kind.name());
        }
        stoodOff = kind == Kind.SUSPENDED || (stoodOff && kind != Kind.REINSTATED);
        if (kind == Kind.WITHDRAWN || kind == Kind.HANDED_BACK) {
            card = kind == Kind.WITHDRAWN ? "withdrawn" : "handed back";
            stoodOff = false;
            questions = false;
            practice = false;
        }
    }

    Set<String> limits() {
        return limits;
    }

    State state(LocalDate day) {
        boolean closed = closures.stream().anyMatch(closure -> {
            LocalDate opened = closure.reopenedOn();
            return day.compareTo(closure.from()) >= 0 && (opened == null || day.compareTo(opened) < 0);
        });
        if (closed) {
            return State.CLOSED;
        }
        if (stoodOff && !card.equals("withdrawn")) {
            return State.SUSPENDED;
        }
        return switch (card) {
            case "nothing" -> State.NOT_HELD;
            case "learning" -> State.LEARNING;
            case "declared" -> State.DECLARED;
            case "assessed" -> State.ASSESSED;
            case "held" ->
                toBeTaught ? State.LEARN_ANEW : day.plusDays(warnDays).isBefore(end()) ? State.HELD : State.DUE;
            case "lapsed" -> State.LAPSED;
            case "withdrawn" -> State.WITHDRAWN;
            default -> State.HANDED_BACK;
        };
    }
}
