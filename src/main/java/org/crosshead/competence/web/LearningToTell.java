package org.crosshead.competence.web;

import java.util.List;
import java.util.Locale;
import org.crosshead.competence.learning.LearningTurn;
import org.crosshead.competence.learning.LearningTurns;
import org.crosshead.platform.CurrentActor.Actor;
import org.crosshead.platform.StartPageSection;
import org.springframework.context.MessageSource;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Start page: the learning turns that somebody learns or teaches in. */
@Component
@Order(4)
class LearningToTell implements StartPageSection {

    private final LearningTurns turns;
    private final MessageSource messages;

    LearningToTell(LearningTurns turns, MessageSource messages) {
        this.turns = turns;
        this.messages = messages;
    }

    @Override
    public String titleCode() {
        return "competence.start.learning";
    }

    @Override
    public String emptyCode() {
        return "competence.start.learning-empty";
    }

    @Override
    public boolean isFor(Actor actor) {
        return actor.holds("DRIVER") || actor.holds("FIREMAN");
    }

    @Override
    public List<Link> links(Actor actor) {
        return turns.visible(false).stream()
                .map(turn -> new Link("/learning", turn.trainCode() + " " + turn.day(), said(turn, actor)))
                .toList();
    }

    private String said(LearningTurn turn, Actor actor) {
        Long me = actor.personId();
        boolean teaches = me != null && me == turn.teacherId();
        String code = teaches ? turns.known(turn).come() ? "tell" : "teach" : "learn";
        return messages.getMessage("competence.start.learning." + code, null, Locale.UK);
    }
}
