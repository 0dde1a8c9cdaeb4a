package org.crosshead.competence.refresh;

import org.crosshead.FreshPostgres;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

/** The same on a real PostgreSQL. */
@SpringBootTest
@ContextConfiguration(initializers = FreshPostgres.class)
class RefreshPlansOnPostgresTests extends RefreshPlansOnDemonstrationTests {}
