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

/** Classes of engines. A change is a new revision; none is ever edited. */
@Service
public class LocomotiveClasses {

    private final LocomotiveClassStore store;
    private final EngineStore engines;
    private final RevisionWriter writer;

    LocomotiveClasses(LocomotiveClassStore store, EngineStore engines, RevisionWriter writer) {
        this.store = store;
        this.engines = engines;
        this.writer = writer;
    }

    /**
     * Stores a class, or a further revision of it.
     *
     * @throws StockRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public ClassRevision enter(LocomotiveClassDraft draft, String reason) {
        return store(draft, reason, null);
    }

    /**
     * Stores a revision made from the one that a person had before them.
     *
     * @param basedOn number of that revision, 0 for a new class
     * @throws StockRefusedException if anything in the draft is wrong
     * @throws StockChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public ClassRevision enter(LocomotiveClassDraft draft, String reason, int basedOn) {
        return store(draft, reason, basedOn);
    }

    /**
     * Accepts the estimate of an unknown figure, or one entered but not yet accepted: a new revision in which it counts.
     *
     * @throws StockRefusedException if the class or figure is not known, or there is nothing to accept
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public ClassRevision acceptEstimate(String classCode, String figureKey) {
        ClassRevision current = store.current(classCode)
                .orElseThrow(() -> new StockRefusedException(List.of(refused("code", "class-unknown", classCode))));
        LocomotiveClassDraft content = current.content();
        SourcedFigure estimate = Estimates.toAccept(content.figures(), figureKey, ClassFigure::keyed)
                .orElseThrow(() ->
                        new StockRefusedException(List.of(refused("figures." + figureKey, "no-estimate", figureKey))));
        LocomotiveClassDraft accepted = new LocomotiveClassDraft(
                content.code(),
                content.name(),
                content.description(),
                content.tenderEngine(),
                content.valveFamily(),
                content.engineBrake(),
                content.trainBrake(),
                Estimates.replaced(content.figures(), estimate),
                content.notes());
        return store(accepted, "Estimate accepted: " + figureKey, current.number());
    }

    public Optional<ClassRevision> current(String code) {
        return store.current(code);
    }

    public Optional<ClassRevision> revision(long id) {
        return store.revision(id);
    }

    /** Returns the current revision of every class, by code. */
    public List<ClassRevision> all() {
        return store.all();
    }

    /** Returns every revision of a class, the latest first. */
    public List<ClassRevision> history(String code) {
        return store.history(code);
    }

    private ClassRevision store(LocomotiveClassDraft draft, String reason, @Nullable Integer basedOn) {
        List<StockProblem> problems = new ArrayList<>(LocomotiveClassRules.problems(draft, reason));
        if (problems.isEmpty()) {
            problems.addAll(withEngines(draft));
        }
        StockRefusedException.throwIfAny(problems);
        long id = writer.write(new NewRevision(
                RevisionTables.LOCOMOTIVE_CLASS,
                draft.code(),
                basedOn,
                reason,
                LocomotiveClassStore.columns(draft),
                draft.figures()));
        store.insertNotes(id, draft.notes());
        return store.revision(id).orElseThrow();
    }

    /** An engine's own figures must still agree with the class's. */
    private List<StockProblem> withEngines(LocomotiveClassDraft draft) {
        return engines.all().stream()
                .map(EngineRevision::content)
                .filter(engine -> engine.classCode().equals(draft.code()))
                .filter(engine -> !LocomotiveClassRules.agreement(
                                draft.valveFamily(),
                                StoredFigures.stated(StoredFigures.merged(draft.figures(), engine.figures())))
                        .isEmpty())
                .map(engine -> refused("figures", "engine-disagrees", engine.number()))
                .toList();
    }
}
