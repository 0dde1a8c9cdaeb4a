package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.crosshead.stock.figure.ClassFigure;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Engines of the classes. A change is a new revision; none is ever edited. */
@Service
public class Engines {

    private final EngineStore store;
    private final RevisionStore revisions;
    private final LocomotiveClassStore classes;
    private final RevisionWriter writer;

    Engines(EngineStore store, RevisionStore revisions, LocomotiveClassStore classes, RevisionWriter writer) {
        this.store = store;
        this.revisions = revisions;
        this.classes = classes;
        this.writer = writer;
    }

    /**
     * Stores an engine, or a further revision of it.
     *
     * @throws StockRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public EngineRevision enter(EngineDraft draft, String reason) {
        return store(draft, reason, null);
    }

    /**
     * Stores a revision made from the one that a person had before them.
     *
     * @param basedOn number of that revision, 0 for a new engine
     * @throws StockRefusedException if anything in the draft is wrong
     * @throws StockChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public EngineRevision enter(EngineDraft draft, String reason, int basedOn) {
        return store(draft, reason, basedOn);
    }

    /**
     * Accepts an estimate that stands among the engine's own figures: a new revision in which it counts. The rules for unknown
     * figures are offered at the class.
     *
     * @throws StockRefusedException if the engine or figure is not known, or there is nothing to accept
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public EngineRevision acceptEstimate(String number, String figureKey) {
        EngineRevision current = store.current(number)
                .orElseThrow(() -> new StockRefusedException(List.of(refused("number", "engine-unknown", number))));
        EngineDraft content = current.content();
        SourcedFigure estimate = StoredFigures.keyed(content.figures(), figureKey)
                .flatMap(own -> Estimates.toAccept(content.figures(), figureKey, ClassFigure::keyed))
                .orElseThrow(() ->
                        new StockRefusedException(List.of(refused("figures." + figureKey, "no-estimate", figureKey))));
        EngineDraft accepted = new EngineDraft(
                content.number(),
                content.name(),
                content.classCode(),
                content.remarks(),
                Estimates.replaced(content.figures(), estimate));
        return store(accepted, "Estimate accepted: " + figureKey, current.number());
    }

    public Optional<EngineRevision> current(String number) {
        return store.current(number);
    }

    public Optional<EngineRevision> revision(long id) {
        return store.revision(id);
    }

    /** Returns the current revision of every engine, by number. */
    public List<EngineRevision> all() {
        return store.all();
    }

    /** Returns the current revision of every engine of a class, by number. */
    public List<EngineRevision> ofClass(String classCode) {
        return store.all().stream()
                .filter(engine -> engine.content().classCode().equals(classCode))
                .toList();
    }

    private EngineRevision store(EngineDraft draft, String reason, @Nullable Integer basedOn) {
        StockRefusedException.throwIfAny(problems(draft, reason));
        long classId = revisions
                .head(RevisionTables.LOCOMOTIVE_CLASS, draft.classCode())
                .orElseThrow()
                .id();
        long id = writer.write(new NewRevision(
                RevisionTables.ENGINE,
                draft.number(),
                basedOn,
                reason,
                EngineStore.columns(draft, classId),
                draft.figures()));
        return store.revision(id).orElseThrow();
    }

    private List<StockProblem> problems(EngineDraft draft, String reason) {
        List<StockProblem> problems = new ArrayList<>(TextRules.with(reason)
                .code("number", draft.number())
                .optional("name", draft.name(), TextRules.NAME_LENGTH_MAX)
                .optional("remarks", draft.remarks(), TextRules.TEXT_LENGTH_MAX)
                .problems());
        problems.addAll(FigureRules.problems(draft.figures(), ClassFigure::keyed));
        classes.current(draft.classCode())
                .ifPresentOrElse(
                        ofClass -> problems.addAll(LocomotiveClassRules.agreement(
                                ofClass.content().valveFamily(),
                                StoredFigures.stated(
                                        StoredFigures.merged(ofClass.content().figures(), draft.figures())))),
                        () -> problems.add(refused("classCode", "class-unknown", draft.classCode())));
        return problems;
    }
}
