package org.crosshead.kernel.cylinder;

/**
 * The same physics written again, plainly and slowly: 20,000 angles of the crank, flows as finite differences with the step cut until
 * no more than a thousandth of the gap closes at once, pressures from the mass by the steam's law. Shares nothing with the fast
 * one but the description of the valve.
 */
final class SlowDiagram {

    private static final int ANGLES = 20_000;

    private SlowDiagram() {}

    record Result(double meanPressurePa, double steamKgPerM3) {}

    static Result of(CylinderForm form, double cutoff, IndicatorDiagram.Ends ends, IndicatorDiagram.Pace pace) {
        double lapLead = form.valve().lap() + form.valve().lead();
        double cutoffAngle = Math.acos(1 - 2 * cutoff);
        double ahead = (form.valve().lap() - lapLead * Math.cos(cutoffAngle)) / Math.sin(cutoffAngle);
        double n = ends.exponent();
        double sweep = Math.PI / 4 * pace.strokeShare();
        double turnS = 2 * pace.strokeShare() / Math.max(0.01, pace.boresPerS());
        double constant = ends.chestPa() * Math.pow(ends.volumeM3PerKg(), n);
        double volume = sweep * (1 + form.clearance());
        double kg = volume * Math.pow(ends.backPa() / constant, 1 / n);
        double work = 0;
        double drawn = 0;
        for (int i = ANGLES / 2; i < 2 * ANGLES; i++) {
            boolean counts = i >= ANGLES;
            double angle = 2 * Math.PI * (i + 0.5) / ANGLES;
            double x = lapLead * Math.cos(angle) + ahead * Math.sin(angle);
            double in = Math.max(
                    0, Math.min(form.valve().portWidth(), x - form.valve().lap()));
            double out = Math.max(
                    0, Math.min(form.valve().portWidth(), -x - form.valve().exhaustLap()));
            double area = form.flowShare() * form.valve().portLength() * (in > 0 ? in : out);
            double beyond = in > 0 ? ends.chestPa() : ends.backPa();
            double next = sweep * (form.clearance() + (1 - Math.cos(2 * Math.PI * (i + 1.0) / ANGLES)) / 2);
            double before = constant * Math.pow(kg / volume, n);
            double was = kg;
            kg = area > 0 ? after(kg, next, beyond, area, turnS / ANGLES, constant, n) : kg;
            double p = constant * Math.pow(kg / next, n);
            if (counts) {
                work += (before + p) / 2 * (next - volume);
                drawn += in > 0 ? kg - was : 0;
            }
            volume = next;
        }
        return new Result(work / sweep, drawn / sweep);
    }

    private static double after(
            double kg, double volume, double beyond, double area, double seconds, double constant, double n) {
        double left = seconds;
        double mass = kg;
        for (int i = 0; i < 5_000 && left > 0; i++) {
            double p = constant * Math.pow(mass / volume, n);
            double even = volume * Math.pow(beyond / constant, 1 / n);
            double gap = even - mass;
            if (Math.abs(gap) < 1e-9 * even) {
                return even;
            }
            double flow = area * (gap > 0 ? flux(beyond, volume / even, p) : flux(p, volume / mass, beyond));
            double step = Math.min(left, 1e-2 * Math.abs(gap) / flow);
            mass += Math.signum(gap) * flow * step;
            left -= step;
        }
        return left > 0 ? volume * Math.pow(beyond / constant, 1 / n) : mass;
    }

    /** Napier's rule where it is choked and an ellipse below: as docs/physics.md says. */
    private static double flux(double from, double specificVolume, double to) {
        double ratio = to / from;
        double share = ratio <= 0.577 ? 1 : Math.sqrt(1 - Math.pow((ratio - 0.577) / 0.423, 2));
        return 0.648 * Math.sqrt(from / specificVolume) * share;
    }
}
