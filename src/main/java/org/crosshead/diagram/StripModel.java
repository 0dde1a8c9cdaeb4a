package org.crosshead.diagram;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a strip shows, along one axis in metres from the start of the path; every word in it is ready to be shown.
 *
 * @param lengthM length of the path
 * @param speedUnit unit of all speeds in it, for example "mph"
 * @param run the forecast
 */
public record StripModel(
        double lengthM,
        String speedUnit,
        List<Tick> ticks,
        List<Mark> marks,
        List<Limit> limits,
        List<Slope> slopes,
        List<Stretch> curves,
        List<Stretch> standing,
        List<Setting> settings,
        List<Stretch> braking,
        List<Work> work,
        List<Point> points,
        Run run,
        Captions captions) {

    public StripModel {
        ticks = List.copyOf(ticks);
        marks = List.copyOf(marks);
        limits = List.copyOf(limits);
        slopes = List.copyOf(slopes);
        curves = List.copyOf(curves);
        standing = List.copyOf(standing);
        settings = List.copyOf(settings);
        braking = List.copyOf(braking);
        work = List.copyOf(work);
        points = List.copyOf(points);
    }

    /** A post of the route's measure. */
    public record Tick(double positionM, String label) {}

    /** What a mark is, which is also how it is drawn. */
    public enum MarkKind {
        PLACE,
        LANDMARK,
        TUNNEL,
        SIGNAL,
        CROSSING,
        WATER,
        HAZARD
    }

    /**
     * A thing at the road.
     *
     * @param toM its end, or null where it has no length
     * @param note smaller words after the name, for example the booked time; may be empty
     */
    public record Mark(
            MarkKind kind, double fromM, @Nullable Double toM, String name, String note) {}

    /**
     * A limit of speed.
     *
     * @param temporary drawn hatched
     */
    public record Limit(double fromM, double toM, double speed, String label, boolean temporary) {}

    /**
     * A length of one gradient.
     *
     * @param gradient rise over run in the direction of travel
     * @param label the figure as printed with its notation, or the word for level
     * @param shortLabel the figure alone, for where the label finds no room
     */
    public record Slope(double fromM, double toM, double gradient, String label, String shortLabel) {}

    /** How a stretch is filled. */
    public enum Fill {
        OPEN,
        DOTTED,
        HATCHED,
        CROSSED,
        SOLID
    }

    /** A stretch with words on it. */
    public record Stretch(double fromM, double toM, Fill fill, String label) {}

    /**
     * Controls held over a stretch.
     *
     * @param cutoff from 0 to 1; 0 with the regulator shut
     * @param regulator from 0 (shut) to 1 (wide open)
     * @param label the cutoff as a figure, or the word for shut
     * @param regulatorLabel the regulator in words
     */
    public record Setting(
            double fromM, double toM, double cutoff, double regulator, String label, String regulatorLabel) {}

    /** What the fireman does over a stretch, or at one place where both ends are the same. */
    public record Work(WorkKind kind, double fromM, double toM, String label) {}

    /** The rows of the fireman's lane. */
    public enum WorkKind {
        FIRE,
        INJECTOR,
        BLOWER
    }

    /**
     * A numbered point that joins the strip to the table.
     *
     * @param href where tapping it leads
     * @param name what a reader who hears it is told
     * @param forFireman drawn open, in the fireman's lane
     */
    public record Point(int number, double positionM, String href, String name, boolean forFireman) {}

    /** The forecast, sampled along the path; all lists of one length. NaN where a value is not known. */
    public record Run(
            List<Double> positionM,
            List<Double> speed,
            List<Double> pressurePsi,
            List<Double> glassPercent,
            Bands bands) {

        /** A forecast of which nobody says how sure it is. */
        public Run(List<Double> positionM, List<Double> speed, List<Double> pressurePsi, List<Double> glassPercent) {
            this(positionM, speed, pressurePsi, glassPercent, Bands.NONE);
        }

        public Run {
            positionM = List.copyOf(positionM);
            speed = List.copyOf(speed);
            pressurePsi = List.copyOf(pressurePsi);
            glassPercent = List.copyOf(glassPercent);
            int n = positionM.size();
            if (speed.size() != n || pressurePsi.size() != n || glassPercent.size() != n) {
                throw new IllegalArgumentException("the lists of a run must be of one length, but were " + n + ", "
                        + speed.size() + ", " + pressurePsi.size() + ", " + glassPercent.size());
            }
        }
    }

    /** Between which values most days lie, sampled along the path; all lists of one length, empty where nothing is known. */
    public record Bands(
            List<Double> positionM,
            List<Double> pressureLow,
            List<Double> pressureHigh,
            List<Double> glassLow,
            List<Double> glassHigh) {

        public static final Bands NONE = new Bands(List.of(), List.of(), List.of(), List.of(), List.of());

        public Bands {
            positionM = List.copyOf(positionM);
            pressureLow = List.copyOf(pressureLow);
            pressureHigh = List.copyOf(pressureHigh);
            glassLow = List.copyOf(glassLow);
            glassHigh = List.copyOf(glassHigh);
        }
    }

    /** The words at the left of the lanes, and those the strip writes itself. */
    public record Captions(
            String speed,
            String gradient,
            String curves,
            String water,
            String hazards,
            String standing,
            String points,
            String cutoff,
            String regulator,
            String fireman,
            String boiler,
            String glass,
            String lowest,
            String brake,
            String fire,
            String injector,
            String blower) {}
}
