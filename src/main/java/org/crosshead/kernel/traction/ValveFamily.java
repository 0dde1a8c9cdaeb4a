package org.crosshead.kernel.traction;

import org.crosshead.kernel.cylinder.CylinderForm;

/** Family of valve gear, by the travel of the valve in full gear. */
public enum ValveFamily {
    SHORT_TRAVEL,
    LONG_TRAVEL;

    /** Returns the example of the family, which stands for a class whose own dimensions are not known. */
    public CylinderForm form() {
        return this == SHORT_TRAVEL ? CylinderForm.SHORT_TRAVEL : CylinderForm.LONG_TRAVEL;
    }
}
