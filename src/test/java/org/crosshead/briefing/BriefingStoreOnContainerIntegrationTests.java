package org.crosshead.briefing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.postgresql.ds.PGSimpleDataSource;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** Briefings on PostgreSQL in a container; left out where there is no Docker engine. */
class BriefingStoreOnContainerIntegrationTests extends BriefingStoreContract {

    private static PostgreSQLContainer container;

    @BeforeAll
    static void start() {
        assumeTrue(DockerClientFactory.instance().isDockerAvailable(), "no Docker engine here");
        container = new PostgreSQLContainer("postgres:17-alpine");
        container.start();
    }

    @Override
    DataSource dataSource() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl(container.getJdbcUrl());
        source.setUser(container.getUsername());
        source.setPassword(container.getPassword());
        return source;
    }

    @AfterAll
    static void stop() {
        if (container != null) {
            container.stop();
        }
    }
}
