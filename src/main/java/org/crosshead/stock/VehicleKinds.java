package org.crosshead.stock;

import static org.crosshead.stock.StockProblem.refused;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.crosshead.kernel.resistance.ResistanceFamily;
import org.crosshead.kernel.units.Units;
import org.crosshead.stock.figure.KnownFigures;
import org.crosshead.stock.figure.VehicleFigure;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Kinds of carriages and wagons. A change is a new revision; none is ever edited. */
@Service
public class VehicleKinds {

    /**
     * Greatest force of all blocks as a share of the weight empty. Coaches have 0.7 to 0.9, wagons about 0.7 (from memory); with cast
     * iron and the lower adhesion of a wet rail wheels slide at a stop from about 1.1.
     */
    private static final double BLOCKS_OF_TARE = 1.1;

    /** A braked weight percentage over 200 is none that a rule converts. */
    private static final double BRAKED_WEIGHT_MOST = 2;

    private static final Set<ResistanceFamily> ENGINES =
            EnumSet.of(ResistanceFamily.LOCOMOTIVE, ResistanceFamily.TENDER);

    private final VehicleKindStore store;
    private final RevisionWriter writer;

    VehicleKinds(VehicleKindStore store, RevisionWriter writer) {
        this.store = store;
        this.writer = writer;
    }

    /**
     * Stores a kind, or a further revision of it.
     *
     * @throws StockRefusedException if anything in the draft is wrong
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public VehicleKindRevision enter(VehicleKindDraft draft, String reason) {
        return store(draft, reason, null);
    }

    /**
     * Stores a revision made from the one that a person had before them.
     *
     * @param basedOn number of that revision, 0 for a new kind
     * @throws StockRefusedException if anything in the draft is wrong
     * @throws StockChangedException if somebody else has made a revision meanwhile
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public VehicleKindRevision enter(VehicleKindDraft draft, String reason, int basedOn) {
        return store(draft, reason, basedOn);
    }

    /**
     * Accepts the estimate of an unknown figure, or one entered but not yet accepted: a new revision in which it counts.
     *
     * @throws StockRefusedException if the kind or figure is not known, or there is nothing to accept
     */
    @Transactional
    @PreAuthorize("hasRole('INSPECTOR')")
    public VehicleKindRevision acceptEstimate(String kindCode, String figureKey) {
        VehicleKindRevision current = store.current(kindCode)
                .orElseThrow(() -> new StockRefusedException(List.of(refused("code", "kind-unknown", kindCode))));
        VehicleKindDraft content = current.content();
        SourcedFigure estimate = Estimates.toAccept(content.figures(), figureKey, VehicleFigure::keyed)
                .orElseThrow(() ->
                        new StockRefusedException(List.of(refused("figures." + figureKey, "no-estimate", figureKey))));
        VehicleKindDraft accepted = new VehicleKindDraft(
                content.code(),
                content.name(),
                content.family(),
                content.brake(),
                content.bearing(),
                Estimates.replaced(content.figures(), estimate));
        return store(accepted, "Estimate accepted: " + figureKey, current.number());
    }

    public Optional<VehicleKindRevision> current(String code) {
        return store.current(code);
    }

    public Optional<VehicleKindRevision> revision(long id) {
        return store.revision(id);
    }

    /** Returns the current revision of every kind, by code. */
    public List<VehicleKindRevision> all() {
        return store.all();
    }

    private VehicleKindRevision store(VehicleKindDraft draft, String reason, @Nullable Integer basedOn) {
        StockRefusedException.throwIfAny(problems(draft, reason));
        long id = writer.write(new NewRevision(
                RevisionTables.VEHICLE_KIND,
                draft.code(),
                basedOn,
                reason,
                VehicleKindStore.columns(draft),
                draft.figures()));
        return store.revision(id).orElseThrow();
    }

    static List<StockProblem> problems(VehicleKindDraft draft, String reason) {
        List<StockProblem> problems = new ArrayList<>(TextRules.with(reason)
                .code("code", draft.code())
                .needed("name", draft.name(), TextRules.NAME_LENGTH_MAX)
                .problems());
        if (ENGINES.contains(draft.family())) {
            problems.add(refused("family", "not-a-vehicle"));
        }
        if (draft.brake() == BrakeKind.STEAM) {
            problems.add(refused("brake", "vehicle-brake"));
        }
        List<StockProblem> singly = FigureRules.problems(draft.figures(), VehicleFigure::keyed);
        problems.addAll(singly);
        if (singly.isEmpty()) {
            problems.addAll(agreement(StoredFigures.stated(draft.figures())));
        }
        return problems;
    }

    /** Checks brakes against the weight that they act on. */
    private static List<StockProblem> agreement(KnownFigures known) {
        List<StockProblem> problems = new ArrayList<>();
        double tareKg = known.si(VehicleFigure.TARE).orElse(Double.POSITIVE_INFINITY);
        double loadKg = known.si(VehicleFigure.LOAD).orElse(0.0);
        double mostN = BLOCKS_OF_TARE * tareKg * Units.GRAVITY_MPS2;
        known.si(VehicleFigure.BRAKE_BLOCK_FORCE)
                .filter(forceN -> forceN > mostN)
                .ifPresent(forceN -> problems.add(refused("figures.brake_block_force", "blocks-slide")));
        known.si(VehicleFigure.HAND_BRAKE_FORCE)
                .filter(forceN -> forceN > mostN)
                .ifPresent(forceN -> problems.add(refused("figures.hand_brake_force", "blocks-slide")));
        known.si(VehicleFigure.BRAKED_WEIGHT)
                .filter(brakedKg -> brakedKg > BRAKED_WEIGHT_MOST * (tareKg + loadKg))
                .ifPresent(brakedKg -> problems.add(refused("figures.braked_weight", "braked-weight-high")));
        return problems;
    }
}
