package org.crosshead.briefing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.crosshead.platform.Origin;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The railway's own figures: margins and reserves, each with an owner, a version and a day from which it holds once it is approved. */
@Repository
public class Policy {

    public static final String BRAKING_MARGIN = "braking.margin-factor";
    public static final String REACTION_TIME = "braking.reaction-time";
    public static final String SERVICE_SHARE = "braking.service-share";
    public static final String WATER_RESERVE = "water.reserve-share";
    public static final String HEATING_STEAM = "heating.steam-per-vehicle";
    /** 1 or 2 where the railway works by that table of a tramway ordinance, else 0. */
    public static final String TRAMWAY_TABLE = "braking.tramway-table";

    /** What a plan weighs against coal: a pound of water, a metre eased for the rail, a second late. */
    public static final String WATER_WEIGHT = "plan.water-weight";

    public static final String SLIP_WEIGHT = "plan.slip-weight";
    public static final String LATE_WEIGHT = "plan.late-weight";

    /** What the keys of the railway's own table of hand brakes on a standing train begin with. */
    public static final String HAND_BRAKES = "hand-brakes.";

    /** What the keys of the railway's own table of wagons pinned down before a fall begin with. */
    public static final String PINNED_WAGONS = "pinned-wagons.";

    /** Follows on either: brakes of a train of up to so many vehicles. */
    public static final String VEHICLES_TO = "vehicles-to.";

    /** Follows on either: per cent of the vehicles where the slope is 1 in so much or steeper. */
    public static final String SHARE_FROM = "per-cent-from-one-in.";

    public static final String LANDMARK_REACH = "landmark.reach";

    /** What the keys of the spread of days begin with. They change how sure a forecast is said to be, not what is told to be done. */
    public static final String SCATTER = "scatter.";

    private final JdbcClient jdbc;

    /** Says whether a figure changes what a crew is told to do, rather than how sure a forecast is. */
    public static boolean tells(String key) {
        return !key.startsWith(SCATTER);
    }

    Policy(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One policy figure as it stood.
     *
     * @param origin where it came from; an own rule is an estimate
     * @param version version of the policy it was taken from
     * @param validFrom day from which it holds
     */
    public record PolicyFigure(
            String key,
            double value,
            String unit,
            Origin origin,
            String source,
            String owner,
            int version,
            LocalDate validFrom) {

        /** Returns the value as it is written, with its unit. */
        public String told() {
            String number = value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
            return (number + " " + unit).strip();
        }
    }

    /** Returns the figures that hold on a day, by key. */
    public Map<String, PolicyFigure> on(LocalDate day) {
        Map<String, PolicyFigure> figures = new TreeMap<>();
        jdbc.sql(
                        "select * from policy_figure where valid_from <= ? and approved_by is not null order by policy_key, policy_version")
                .param(day)
                .query(Policy::figure)
                .list()
                .forEach(figure -> figures.put(figure.key(), figure));
        return figures;
    }

    static PolicyFigure figure(ResultSet rs, int row) throws SQLException {
        return new PolicyFigure(
                rs.getString("policy_key"),
                rs.getDouble("policy_value"),
                rs.getString("unit"),
                Origin.valueOf(rs.getString("origin")),
                rs.getString("source"),
                rs.getString("policy_owner"),
                rs.getInt("policy_version"),
                rs.getObject("valid_from", LocalDate.class));
    }
}
