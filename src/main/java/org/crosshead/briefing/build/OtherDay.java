package org.crosshead.briefing.build;

import java.util.ArrayList;
import java.util.List;
import org.crosshead.briefing.BriefingRefusedException;
import org.crosshead.briefing.WhatIf;
import org.crosshead.stock.WorkingPressures;
import org.crosshead.working.Train;
import org.crosshead.working.TrainDraft;
import org.crosshead.working.TrainDraft.EnginePosition;
import org.crosshead.working.TrainDraft.EngineTurn;

/** A train with the rail and the engines of a day that is not as planned. Nothing of it is stored. */
final class OtherDay {

    private static final double PER_CENT = 100;
    private static final double HELPER_GLASS = 0.75;

    private OtherDay() {}

    /**
     * @throws BriefingRefusedException if an engine is not known, is named twice, or helps between places that are not calls in running
     *     order
     */
    static Train of(Train train, WhatIf asked, WorkingPressures pressures) {
        TrainDraft content = train.content();
        TrainDraft other = new TrainDraft(
                content.code(),
                content.title(),
                content.day(),
                content.kind(),
                content.formationCode(),
                asked.rail(),
                content.weather(),
                content.dark(),
                content.heated(),
                content.legs().stream().map(leg -> turned(leg, asked)).toList(),
                content.calls(),
                engines(content, asked, pressures),
                content.crew());
        return new Train(
                train.id(),
                train.version(),
                train.cancelled(),
                train.revisionId(),
                train.revision(),
                train.madeAt(),
                train.madeBy(),
                train.reason(),
                other);
    }

    private static TrainDraft.Leg turned(TrainDraft.Leg leg, WhatIf asked) {
        return new TrainDraft.Leg(
                leg.routeCode(),
                leg.fromMeasure(),
                leg.toMeasure(),
                leg.line(),
                leg.direction(),
                leg.tenderFirst() || asked.engine().tenderFirst());
    }

    private static List<EngineTurn> engines(TrainDraft content, WhatIf asked, WorkingPressures pressures) {
        List<EngineTurn> engines = new ArrayList<>();
        for (EngineTurn turn : content.engines()) {
            String number = asked.engine().number();
            boolean other = engines.isEmpty() && number != null && !number.equals(turn.engineNumber());
            double startPsi = other && number != null ? psi(number, pressures) : turn.pressurePsi();
            engines.add(new EngineTurn(
                    other && number != null ? number : turn.engineNumber(),
                    turn.position(),
                    turn.fromPlace(),
                    turn.toPlace(),
                    asked.engine().pressurePercent() / PER_CENT * startPsi,
                    turn.glassShare(),
                    other ? null : turn.waterGallons(),
                    other ? null : turn.coalCwt()));
        }
        WhatIf.Help help = asked.engine().help();
        if (help != null) {
            int from = call(content, help.fromPlace());
            if (from < 0 || call(content, help.toPlace()) <= from) {
                throw new BriefingRefusedException("what-if-help-places");
            }
            engines.add(new EngineTurn(
                    help.number(),
                    EnginePosition.REAR,
                    help.fromPlace(),
                    help.toPlace(),
                    psi(help.number(), pressures),
                    HELPER_GLASS,
                    null,
                    null));
        }
        if (engines.stream().map(EngineTurn::engineNumber).distinct().count() < engines.size()) {
            throw new BriefingRefusedException("what-if-engine-twice");
        }
        return engines;
    }

    private static double psi(String number, WorkingPressures pressures) {
        return pressures.psiOf(number).orElseThrow(() -> new BriefingRefusedException("what-if-engine"));
    }

    private static int call(TrainDraft content, String place) {
        return content.calls().stream().map(TrainDraft.Call::place).toList().indexOf(place);
    }
}
