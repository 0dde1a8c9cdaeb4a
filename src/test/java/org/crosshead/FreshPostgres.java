package org.crosshead;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Gives each application context a database of its own on one real PostgreSQL, which ends with the tests. */
public final class FreshPostgres implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final EmbeddedPostgres SERVER = start();
    private static final AtomicInteger COUNT = new AtomicInteger();

    private static EmbeddedPostgres start() {
        try {
            return EmbeddedPostgres.start();
        } catch (IOException ex) {
            throw new IllegalStateException(ex);
        }
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        String name = "fresh" + COUNT.incrementAndGet();
        try (Connection connection = SERVER.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException ex) {
            throw new IllegalStateException(ex);
        }
        TestPropertyValues.of(
                        "spring.datasource.url=" + SERVER.getJdbcUrl("postgres", name),
                        "spring.datasource.username=postgres",
                        "spring.datasource.password=")
                .applyTo(context);
    }
}
