package org.crosshead.volume;

import org.springframework.boot.test.context.SpringBootTest;

/** A season on the embedded database, in memory. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:volume;DB_CLOSE_DELAY=-1")
class VolumeOnH2Tests extends VolumeContract {

    @Override
    String database() {
        return "h2";
    }

    @Override
    void forbidScansWhereAnIndexWillDo() {
        // Its planner takes an index wherever one serves.
    }
}
