package org.crosshead.platform.account;

import javax.sql.DataSource;
import org.crosshead.MigratedDatabases;

/** Log-ins on a real PostgreSQL. */
class AccountsOnPostgresTests extends AccountStoreContract {

    @Override
    DataSource dataSource() {
        return MigratedDatabases.onPostgres();
    }
}
