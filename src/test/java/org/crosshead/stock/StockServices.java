package org.crosshead.stock;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.crosshead.platform.CurrentActor;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The services of this capability on an empty database of their own, for tests of what stands on them. */
public record StockServices(LocomotiveClasses classes, Engines engines, VehicleKinds kinds, Formations formations) {

    private static final Instant MONDAY = Instant.parse("2030-05-06T08:00:00Z");

    public static StockServices empty() {
        JdbcConnectionPool pool =
                JdbcConnectionPool.create("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
        Flyway.configure()
                .dataSource(pool)
                .locations("classpath:db/migration")
                .load()
                .migrate();
        JdbcClient jdbc = JdbcClient.create(pool);
        RevisionStore revisions = new RevisionStore(jdbc);
        RevisionWriter writer = new RevisionWriter(
                revisions,
                Clock.fixed(MONDAY, ZoneOffset.UTC),
                () -> new CurrentActor.Actor("Anna"),
                (kind, subjectType, id, summary) -> {});
        LocomotiveClassStore classes = new LocomotiveClassStore(jdbc, revisions);
        EngineStore engines = new EngineStore(jdbc, revisions);
        VehicleKindStore kinds = new VehicleKindStore(revisions);
        return new StockServices(
                new LocomotiveClasses(classes, engines, writer),
                new Engines(engines, revisions, classes, writer),
                new VehicleKinds(kinds, writer),
                new Formations(new FormationStore(jdbc, revisions), kinds, writer));
    }
}
