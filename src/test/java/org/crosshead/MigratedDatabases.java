package org.crosshead;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;

/** Databases with all tables and nothing in them. PostgreSQL copies one that was migrated once, which is quicker than migrating. */
public final class MigratedDatabases {

    private static final String TEMPLATE = "migrated";
    private static final EmbeddedPostgres SERVER = start();
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final int CONNECTIONS = 8;

    private static @Nullable HikariDataSource latest;

    private MigratedDatabases() {}

    private static EmbeddedPostgres start() {
        try {
            EmbeddedPostgres server = EmbeddedPostgres.start();
            execute(server, "create database " + TEMPLATE);
            anew(server.getDatabase("postgres", TEMPLATE));
            return server;
        } catch (IOException ex) {
            throw new IllegalStateException(ex);
        }
    }

    private static void execute(EmbeddedPostgres server, String statement) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement execution = connection.createStatement()) {
            execution.execute(statement);
        } catch (SQLException ex) {
            throw new IllegalStateException(ex);
        }
    }

    /** Empties a database and makes all tables. */
    public static void anew(DataSource database) {
        Flyway flyway = Flyway.configure()
                .dataSource(database)
                .locations("classpath:db/migration")
                .cleanDisabled(false)
                .load();
        flyway.clean();
        flyway.migrate();
    }

    /** Returns the address of a new database on a real PostgreSQL, whose user is {@code postgres} without password. */
    public static String urlOnPostgres() {
        return SERVER.getJdbcUrl("postgres", copied());
    }

    private static String copied() {
        String name = "copy" + COUNT.incrementAndGet();
        execute(SERVER, "create database " + name + " template " + TEMPLATE);
        return name;
    }

    /** Returns a new database on a real PostgreSQL; the one returned before is closed. */
    public static synchronized DataSource onPostgres() {
        if (latest != null) {
            latest.close();
        }
        HikariConfig pool = new HikariConfig();
        pool.setDataSource(SERVER.getDatabase("postgres", copied()));
        pool.setMaximumPoolSize(CONNECTIONS);
        latest = new HikariDataSource(pool);
        return latest;
    }
}
