package org.crosshead;

import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Gives each application context a database of its own on a real PostgreSQL. */
public final class FreshPostgres implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        TestPropertyValues.of(
                        "spring.datasource.url=" + MigratedDatabases.urlOnPostgres(),
                        "spring.datasource.username=postgres",
                        "spring.datasource.password=")
                .applyTo(context);
    }
}
