package org.crosshead.routeknowledge.question;

import org.crosshead.FreshPostgres;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

/** The same on a real PostgreSQL. */
@SpringBootTest
@ContextConfiguration(initializers = FreshPostgres.class)
class SelfTestsOnPostgresTests extends SelfTestsTests {}
