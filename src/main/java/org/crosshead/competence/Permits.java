package org.crosshead.competence;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.competence.CompetenceEvent.Kind;
import org.crosshead.competence.Permit.Answer;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.Train;
import org.crosshead.working.Trains;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says whether the crew of a train may take it, by the records, and enters what they have worked once it is confirmed. */
@Service
public class Permits {

    private final Trains trains;
    private final Knowledge knowledge;
    private final PermitQuestion question;
    private final Clock clock;
    private final ZoneId zone;

    Permits(Trains trains, Knowledge knowledge, PermitQuestion question, Clock clock, ZoneId zone) {
        this.trains = trains;
        this.knowledge = knowledge;
        this.question = question;
        this.clock = clock;
        this.zone = zone;
    }

    /** Returns the answer for a train as it is crewed now, for the day on which its turn ends. */
    public Permit of(long trainId) {
        return PermitRules.decide(question.of(known(trainId)));
    }

    private Train known(long trainId) {
        return trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
    }

    /**
     * Enters what the crew of a train have worked, once it has run: only a confirmed turn counts, for the sections actually run. Over what a
     * driver did not hold they are entered as conducted, and the conductor driver as such; under a teacher as a learning turn.
     *
     * @param badWeather whether there was fog, rain, snow or leaf fall; it counts for lessons
     * @return how many entries were made
     * @throws ActRefusedException if the train has not run yet
     */
    @Transactional
    @PreAuthorize("hasAnyRole('MANAGER', 'INSPECTOR')")
    public int confirm(long trainId, boolean badWeather) {
        Train train = known(trainId);
        if (train.cancelled()) {
            throw new ActRefusedException("train-cancelled");
        }
        LocalDate day = question.turnEnds(train.content());
        if (day.isAfter(LocalDate.now(clock.withZone(zone)))) {
            throw new ActRefusedException("in-the-future");
        }
        String code = train.content().code();
        List<Knowledge.Entry> entries = new ArrayList<>();
        for (Permit.Line line : of(trainId).lines()) {
            Subject subject = line.holding().subject();
            if (subject.kind() == Subject.Kind.PERSON) {
                continue;
            }
            Long along = helper(line).orElse(null);
            entries.add(new Knowledge.Entry(
                    line.personId(),
                    kind(line.answer()),
                    subject,
                    day,
                    along,
                    null,
                    null,
                    null,
                    code,
                    circumstances(train, badWeather)));
            if (along != null && line.answer() == Answer.CONDUCTED) {
                entries.add(new Knowledge.Entry(along, Kind.CONDUCTED, subject, day, null, null, code));
            }
        }
        int made = 0;
        for (Knowledge.Entry entry : entries) {
            if (knowledge.enteredAnew(entry)) {
                made++;
            }
        }
        return made;
    }

    private static Set<Circumstance> circumstances(Train train, boolean badWeather) {
        Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
        if (train.content().dark()) {
            circumstances.add(Circumstance.DARK);
        }
        if (badWeather) {
            circumstances.add(Circumstance.BAD_WEATHER);
        }
        return circumstances;
    }

    private static Kind kind(Answer answer) {
        return switch (answer) {
            case CONDUCTED -> Kind.WORKED_CONDUCTED;
            case INSTRUCTED -> Kind.LEARNED;
            case ALLOWED, EXEMPT, REFERRED, REFUSED -> Kind.WORKED;
        };
    }

    private static Optional<Long> helper(Permit.Line line) {
        boolean helped = line.answer() == Answer.CONDUCTED || line.answer() == Answer.INSTRUCTED;
        return helped ? Optional.of(line.conductors().get(0)) : Optional.empty();
    }
}
