package org.crosshead.kernel.traction;

/** Which part rules the pull. */
public enum LimitedBy {
    /** The cylinders give no more at these handles. */
    CYLINDER,
    /** The boiler can't keep up steam for more: held for long, the pressure falls. */
    BOILER,
    /** The wheels would slip. */
    RAIL;

    /** Returns which of the three forces is least; of equals the rail, then the cylinders. */
    public static LimitedBy least(double cylinderN, double boilerN, double railN) {
        if (railN <= cylinderN && railN <= boilerN) {
            return RAIL;
        }
        return boilerN < cylinderN ? BOILER : CYLINDER;
    }
}
