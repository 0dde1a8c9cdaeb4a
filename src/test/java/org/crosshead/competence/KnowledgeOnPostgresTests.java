package org.crosshead.competence;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** Knowledge on a real PostgreSQL. */
class KnowledgeOnPostgresTests extends KnowledgeContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
