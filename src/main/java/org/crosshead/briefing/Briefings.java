package org.crosshead.briefing;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.crosshead.briefing.build.BriefingBuilder;
import org.crosshead.briefing.document.BriefingDocument;
import org.crosshead.briefing.document.Phrase;
import org.crosshead.briefing.document.Place;
import org.crosshead.briefing.document.Since;
import org.crosshead.briefing.document.Term;
import org.crosshead.platform.CurrentActor;
import org.crosshead.platform.Journal;
import org.crosshead.platform.NotFoundException;
import org.crosshead.working.OwnTrains;
import org.crosshead.working.Train;
import org.crosshead.working.Trains;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Prepares, issues and shows briefings. An issued one is frozen; a change is a new issue that replaces it. */
@Service
@Transactional(readOnly = true)
public class Briefings {

    private static final String SUBJECT = "briefing";
    private static final int CLIENT_ID_MAX = 64;
    private static final int REASON_MIN = 5;
    private static final int REASON_MAX = 400;

    private final BriefingBuilder builder;
    private final BriefingStore store;
    private final Trains trains;
    private final OwnTrains ownTrains;
    private final Journal journal;
    private final CurrentActor actor;
    private final Clock clock;

    Briefings(
            BriefingBuilder builder,
            BriefingStore store,
            Trains trains,
            OwnTrains ownTrains,
            Journal journal,
            CurrentActor actor,
            Clock clock) {
        this.builder = builder;
        this.store = store;
        this.trains = trains;
        this.ownTrains = ownTrains;
        this.journal = journal;
        this.actor = actor;
        this.clock = clock;
    }

    /**
     * Computes and stores a briefing in place of what was prepared before and never issued.
     *
     * @return its id
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public long prepare(long trainId) {
        return prepare(trainId, Progress.UNHEARD);
    }

    /** As {@link #prepare(long)}, telling how far it has come. */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public long prepare(long trainId, Progress progress) {
        progress.begins(Progress.Part.READS);
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
        if (train.cancelled()) {
            throw new BriefingRefusedException("train-cancelled");
        }
        BriefingDocument made = builder.build(train, progress);
        BriefingDocument document = store.inForce(trainId)
                .map(issue -> made.compared(new Since(issue.number(), Differences.between(issue.document(), made))))
                .orElse(made);
        store.deletePrepared(trainId);
        long id = store.insert(trainId, document);
        journal.write("briefing.prepared", SUBJECT, id, train.content().code());
        return id;
    }

    /**
     * Freezes a prepared briefing and numbers it; it replaces the issue before.
     *
     * @param despite why it is issued although it names a danger; blank where it names none
     * @throws BriefingRefusedException if it is not complete, out of date, names a danger without a reason to issue it all the
     *     same, or is issued already
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public void issue(long id, String despite) {
        StoredBriefing briefing = store.find(id).orElseThrow(() -> new NotFoundException(SUBJECT, id));
        if (!briefing.document().missing().isEmpty()) {
            throw new BriefingRefusedException("not-complete");
        }
        Train train = trains.find(briefing.trainId()).orElseThrow(() -> new NotFoundException(SUBJECT, id));
        if (!changes(briefing, train).isEmpty()) {
            throw new BriefingRefusedException("out-of-date");
        }
        String reason = reason(briefing.document(), despite);
        store.replaceIssued(briefing.trainId());
        int number = store.nextIssueNumber(briefing.trainId());
        if (!store.issue(
                id, new BriefingStore.Issue(number, clock.instant(), actor.get().name(), reason))) {
            throw new BriefingRefusedException("not-prepared");
        }
        String trainCode = briefing.document().heading().trainCode();
        journal.write(
                "briefing.issued",
                SUBJECT,
                id,
                trainCode + " issue " + number + (reason == null ? "" : ", despite a danger named: " + reason));
    }

    private static @Nullable String reason(BriefingDocument document, String despite) {
        if (document.dangers().isEmpty()) {
            return null;
        }
        String reason = despite.strip();
        if (reason.length() < REASON_MIN) {
            throw new BriefingRefusedException("danger");
        }
        if (reason.length() > REASON_MAX) {
            throw new BriefingRefusedException("reason-long");
        }
        return reason;
    }

    /**
     * Takes a crew member's word that they have read an issue. The same id sent again counts once.
     *
     * @param clientId made by the reader's device, 1 to 64 characters
     * @param deviceTime by the clock of the device
     * @throws BriefingRefusedException if the reader is not of its crew, or it is not the issue that holds
     */
    @Transactional
    @PreAuthorize("hasAnyRole('DRIVER', 'FIREMAN')")
    public void acknowledge(long id, String clientId, Instant deviceTime) {
        if (clientId.isBlank() || clientId.length() > CLIENT_ID_MAX) {
            throw new BriefingRefusedException("client-id");
        }
        StoredBriefing briefing = visible(id).briefing();
        String staffNumber = ownTrains.staffNumber().orElseThrow(() -> new BriefingRefusedException("not-of-crew"));
        if (briefing.state() == BriefingState.PREPARED) {
            throw new BriefingRefusedException("not-issued");
        }
        if (!isOfCrew(briefing, staffNumber)) {
            throw new BriefingRefusedException("not-of-crew");
        }
        Acknowledgement reading = new Acknowledgement(staffNumber, actor.get().name(), deviceTime, clock.instant());
        if (store.acknowledge(id, clientId, reading)) {
            journal.write("briefing.acknowledged", SUBJECT, id, staffNumber);
        }
    }

    /** Returns a briefing as the person who asks may see it: crew only issues of their own trains. */
    public IssuedBriefing show(long id) {
        Seen seen = visible(id);
        StoredBriefing briefing = seen.briefing();
        Optional<String> staffNumber = ownTrains.staffNumber();
        List<Acknowledgement> readings = store.acknowledgements(id);
        Instant mine = readings.stream()
                .filter(reading ->
                        staffNumber.isPresent() && reading.staffNumber().equals(staffNumber.get()))
                .map(Acknowledgement::receivedAt)
                .findFirst()
                .orElse(null);
        boolean ofCrew = staffNumber.isPresent() && isOfCrew(briefing, staffNumber.get());
        return new IssuedBriefing(
                briefing.id(),
                briefing.trainId(),
                briefing.document().heading().trainCode(),
                briefing.issueNumber(),
                briefing.state(),
                briefing.issuedAt(),
                briefing.issuedBy(),
                briefing.issuedDespite(),
                briefing.document(),
                briefing.state() == BriefingState.REPLACED
                        ? List.of(Phrase.of("out-of-date.replaced"))
                        : changes(briefing, seen.train()),
                mine,
                ofCrew && mine == null && briefing.state() == BriefingState.ISSUED,
                readings,
                notYetRead(briefing, readings));
    }

    /**
     * Returns what comes of the train of a briefing on a day that is not as planned; the briefing stays as it is.
     *
     * @throws BriefingRefusedException if nothing can be computed for want of figures
     */
    public WhatIfAnswer whatIf(long id, WhatIf asked) {
        Seen seen = visible(id);
        return builder.whatIf(seen.train(), seen.briefing().document(), asked);
    }

    /** Returns the places of a briefing's train at which a crew can be told something. */
    @PreAuthorize("hasRole('INSPECTOR')")
    public List<Place> places(long id) {
        return builder.places(visible(id).train());
    }

    /** Returns the briefings of a train, the latest first; crew see what has been issued. */
    public List<BriefingSummary> ofTrain(long trainId) {
        Train train = trains.find(trainId).orElseThrow(() -> new NotFoundException("train", trainId));
        if (!ownTrains.isVisible(train)) {
            throw new NotFoundException("train", trainId);
        }
        return store.ofTrain(trainId).stream()
                .filter(briefing -> ownTrains.seesAll() || briefing.state() != BriefingState.PREPARED)
                .toList();
    }

    /** A briefing that the person who asks may see, and its train as it stands now. */
    private record Seen(StoredBriefing briefing, Train train) {}

    private Seen visible(long id) {
        StoredBriefing briefing = store.find(id).orElseThrow(() -> new NotFoundException(SUBJECT, id));
        Train train = trains.find(briefing.trainId()).orElseThrow(() -> new NotFoundException(SUBJECT, id));
        boolean hidden =
                !ownTrains.isVisible(train) || (briefing.state() == BriefingState.PREPARED && !ownTrains.seesAll());
        if (hidden) {
            throw new NotFoundException(SUBJECT, id);
        }
        return new Seen(briefing, train);
    }

    private static boolean isOfCrew(StoredBriefing briefing, String staffNumber) {
        return briefing.document().heading().crew().stream()
                .anyMatch(line -> line.staffNumber().equals(staffNumber));
    }

    private static List<String> notYetRead(StoredBriefing briefing, List<Acknowledgement> readings) {
        return briefing.document().heading().crew().stream()
                .filter(line -> readings.stream()
                        .noneMatch(reading -> reading.staffNumber().equals(line.staffNumber())))
                .map(line -> line.name())
                .distinct()
                .toList();
    }

    /** Returns what has changed since a briefing was made. */
    private List<Phrase> changes(StoredBriefing briefing, Train train) {
        if (train.cancelled()) {
            return List.of(Phrase.of("out-of-date.cancelled"));
        }
        Map<String, String> now = builder.fingerprint(train);
        Map<String, String> then = then(briefing.document());
        List<Phrase> changes = new ArrayList<>();
        now.forEach((key, value) -> addChange(changes, key, then.get(key), value));
        then.keySet().stream()
                .filter(key -> !now.containsKey(key))
                .forEach(key -> addChange(changes, key, then.get(key), null));
        return changes;
    }

    private static Map<String, String> then(BriefingDocument document) {
        Map<String, String> then = new LinkedHashMap<>();
        document.inputs().revisions().forEach((key, id) -> then.put(key, String.valueOf(id)));
        document.inputs()
                .restrictions()
                .forEach(restriction -> then.put("restriction:" + restriction.number(), restriction.toString()));
        document.inputs().policy().forEach((key, value) -> {
            if (Policy.tells(key)) {
                then.put("policy:" + key, String.valueOf(value));
            }
        });
        return then;
    }

    private static void addChange(List<Phrase> changes, String key, @Nullable String before, @Nullable String after) {
        if (Objects.equals(before, after)) {
            return;
        }
        int colon = key.indexOf(':');
        String kind = before == null ? "new" : after == null ? "gone" : "changed";
        changes.add(
                Phrase.of("out-of-date." + key.substring(0, colon) + "-" + kind, Term.text(key.substring(colon + 1))));
    }

    /** Returns the latest issue of a train, if there is one that the person who asks may see. */
    public Optional<BriefingSummary> latest(long trainId) {
        return ofTrain(trainId).stream()
                .filter(briefing -> briefing.state() == BriefingState.ISSUED)
                .findFirst();
    }
}
