package org.crosshead.load;

import org.crosshead.kernel.traction.RailState;
import org.crosshead.route.Direction;

/**
 * What is asked.
 *
 * @param kindCode kind of vehicle that the load is made of, each with its own load
 * @param tenderFirst whether the engine runs tender or bunker first
 * @param leastMph speed to which the load may fall on a bank when worked steadily, from 1 to 60
 * @param leastPressureShare boiler pressure below which it must not fall, as a share of the working pressure, from 0.3 to 1
 */
public record LoadQuestion(
        String routeCode,
        Direction direction,
        boolean tenderFirst,
        String classCode,
        String kindCode,
        RailState rail,
        double leastMph,
        double leastPressureShare) {}
