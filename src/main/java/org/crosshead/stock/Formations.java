package org.crosshead.stock;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Formations: what a train consists of, front first. A change is a new revision; none is ever edited. */
@Service
public class Formations {

    private final FormationStore store;
    private final VehicleKindStore kinds;
    private final RevisionWriter writer;

    Formations(FormationStore store, VehicleKindStore kinds, RevisionWriter writer) {
        this.store = store;
        this.kinds = kinds;
        this.writer = writer;
    }

    /**
     * Stores a formation, or a further revision of it.
     *
     * @throws StockRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public FormationRevision enter(FormationDraft draft, String reason) {
        return store(draft, reason, null);
    }

    /**
     * Stores a revision made from the one that a person had before them.
     *
     * @param basedOn number of that revision, 0 for a new formation
     * @throws StockRefusedException if anything in the draft is wrong
     * @throws StockChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public FormationRevision enter(FormationDraft draft, String reason, int basedOn) {
        return store(draft, reason, basedOn);
    }

    public Optional<FormationRevision> current(String code) {
        return store.current(code);
    }

    public Optional<FormationRevision> revision(long id) {
        return store.revision(id);
    }

    /** Returns the current revision of every formation, by code. */
    public List<FormationRevision> all() {
        return store.all();
    }

    private FormationRevision store(FormationDraft draft, String reason, @Nullable Integer basedOn) {
        StockRefusedException.throwIfAny(FormationRules.problems(
                draft, reason, code -> kinds.current(code).isPresent()));
        long id = writer.write(new NewRevision(
                RevisionTables.FORMATION, draft.code(), basedOn, reason, FormationStore.columns(draft), List.of()));
        store.insertItems(id, draft.items());
        return store.revision(id).orElseThrow();
    }
}
