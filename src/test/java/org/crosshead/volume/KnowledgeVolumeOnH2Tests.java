package org.crosshead.volume;

import org.springframework.boot.test.context.SpringBootTest;

/** Two million entries on the embedded database, in memory. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:knowledge-volume;DB_CLOSE_DELAY=-1")
class KnowledgeVolumeOnH2Tests extends KnowledgeVolumeContract {

    @Override
    String database() {
        return "h2";
    }

    @Override
    int entriesEach() {
        return 1_000;
    }

    @Override
    String numbers(int most) {
        return "(select x as n from system_range(1, " + most + ")) as e";
    }

    @Override
    void analyse() {
        // Its planner keeps its own figures.
    }

    @Override
    void forbidScansWhereAnIndexWillDo() {
        // Its planner takes an index wherever one serves.
    }
}
