package org.crosshead.competence;

import org.crosshead.FreshPostgres;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

/** The same on a real PostgreSQL. */
@SpringBootTest
@ContextConfiguration(initializers = FreshPostgres.class)
class StoriesOnPostgresTests extends StoriesTests {}
