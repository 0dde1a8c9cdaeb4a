package org.crosshead.working.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.crosshead.stock.BrakeKind;
import org.crosshead.stock.FormationDraft;
import org.crosshead.stock.FormationFigures;
import org.crosshead.stock.FormationRevision;
import org.crosshead.stock.Formations;
import org.crosshead.stock.LoadSummary;
import org.crosshead.stock.StockModel;
import org.crosshead.stock.VehicleKindRevision;
import org.crosshead.stock.VehicleKinds;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What trains take behind the engine, in a few words. */
@Component
class Loads {

    private final Formations formations;
    private final VehicleKinds kinds;
    private final TrainWords words;

    Loads(Formations formations, VehicleKinds kinds, TrainWords words) {
        this.formations = formations;
        this.kinds = kinds;
        this.words = words;
    }

    /**
     * A formation that a train may have.
     *
     * @param load in words, with its weight where it is known
     * @param known whether every figure of it is known
     * @param brake the brake that it asks of the engine
     */
    record Load(FormationDraft content, String load, boolean known, BrakeKind brake) {

        public String code() {
            return content.code();
        }

        public String name() {
            return content.name();
        }
    }

    /** Returns every formation, by code. */
    List<Load> all() {
        Map<String, VehicleKindRevision> byCode = kindsByCode();
        return formations.all().stream()
                .map(FormationRevision::content)
                .map(content -> load(content, byCode))
                .toList();
    }

    /** Returns the load of a formation, or nothing for a light engine. */
    Optional<Load> of(@Nullable String formationCode) {
        return formationCode == null
                ? Optional.empty()
                : formations.current(formationCode).map(revision -> load(revision.content(), kindsByCode()));
    }

    private Load load(FormationDraft content, Map<String, VehicleKindRevision> byCode) {
        int vehicles =
                content.items().stream().mapToInt(FormationDraft.Item::count).sum();
        BrakeKind brake = StockModel.trainBrake(content, byCode);
        FormationFigures figures = StockModel.formation(content, byCode, brake);
        if (figures instanceof FormationFigures.Resolved known) {
            LoadSummary summary = StockModel.summary(known);
            String tons = String.format(Locale.UK, "%,.1f", summary.loadTons());
            return new Load(content, words.of("train.load", vehicles, tons), true, brake);
        }
        return new Load(content, words.of("train.load.unknown", vehicles), false, brake);
    }

    private Map<String, VehicleKindRevision> kindsByCode() {
        return kinds.all().stream()
                .collect(Collectors.toMap(kind -> kind.content().code(), kind -> kind));
    }
}
