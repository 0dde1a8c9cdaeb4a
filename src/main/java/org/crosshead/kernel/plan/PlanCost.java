package org.crosshead.kernel.plan;

/**
 * What a plan costs, and what it would if the handles could be set to anything at any moment; both by the planner's own model and with the
 * boiler left as it was found. Water that the railway prices counts as the coal it is worth.
 *
 * @param bareCoalKg of the bare optimum
 * @param coalKg of the plan at the times of the bare optimum: seconds between the two are valued at the price of time
 * @param hardest greatest making of steam as a share of what the grate can
 */
public record PlanCost(double bareCoalKg, double coalKg, double hardest) {

    /** Returns by how much more coal the plan burns than the bare optimum, as a share of that. */
    public double human() {
        return coalKg / bareCoalKg - 1;
    }
}
