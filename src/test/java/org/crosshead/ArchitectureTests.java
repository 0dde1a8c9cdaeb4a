package org.crosshead;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Controller;

/** Holds the dependency rule that docs/architecture.md draws. */
class ArchitectureTests {

    private static final String ROOT = "org.crosshead.";

    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.crosshead");

    @Test
    void looksAtTheWholeService() {
        assertThat(ALL).hasSizeGreaterThan(150);
    }

    @Test
    void kernelNeedsNothingButTheJdk() {
        classes()
                .that()
                .resideInAPackage("org.crosshead.kernel..")
                .and()
                .resideOutsideOfPackage("org.crosshead.kernel.steam..")
                .should()
                .onlyDependOnClassesThat(
                        resideInAnyPackage("org.crosshead.kernel..", "java.lang..", "java.util..", "org.jspecify.."))
                .because("the kernel must run on a tablet without service, database, files or clock")
                .check(ALL);
    }

    @Test
    void steamNeedsTheTablesOfWaterBesides() {
        classes()
                .that()
                .resideInAPackage("org.crosshead.kernel.steam..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "org.crosshead.kernel..",
                        "java.lang..",
                        "java.util..",
                        "org.jspecify..",
                        "com.hummeling.if97.."))
                .because("steam alone looks up properties of water")
                .check(ALL);
    }

    @ParameterizedTest(name = "kernel.{0} uses only {1}")
    @CsvSource({
        "units, units",
        "figure, figure units",
        "track, track figure units",
        "steam, steam figure units",
        "cylinder, cylinder steam figure units",
        "boiler, boiler steam figure units",
        "traction, traction cylinder boiler track steam figure units",
        "resistance, resistance track steam figure units",
        "braking, braking resistance track steam figure units",
        "standing, standing traction cylinder boiler resistance braking track steam figure units",
        "motion, motion traction cylinder boiler resistance braking track steam figure units",
        "handling, handling motion standing traction cylinder boiler resistance braking track steam figure units",
        "plan, plan handling motion standing traction cylinder boiler resistance braking track steam figure units",
        "scatter, scatter plan handling motion standing traction cylinder boiler resistance braking track steam figure units"
    })
    void kernelPointsDownwards(String upper, String lower) {
        classes()
                .that()
                .resideInAPackage(ROOT + "kernel." + upper + "..")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage("org.crosshead..").or(resideInAnyPackage(packages("kernel.", lower))))
                .because("motion and handling build on traction, resistance and braking, never the other way")
                .check(ALL);
    }

    @ParameterizedTest(name = "{0} uses only {1}")
    @CsvSource({
        "platform, platform",
        "crew, crew platform kernel.figure kernel.units",
        "route, route platform kernel.track kernel.figure kernel.units",
        "stock, stock platform kernel.track kernel.cylinder kernel.boiler kernel.traction kernel.resistance kernel.braking kernel.figure kernel.units",
        "diagram, diagram platform kernel",
        "load, load route stock platform kernel",
        "working, working route stock crew platform kernel.track kernel.traction kernel.figure kernel.units",
        "routeknowledge, routeknowledge route crew platform kernel.figure kernel.units kernel.track",
        "competence, competence routeknowledge working route stock crew platform kernel.figure kernel.units",
        "briefing, briefing working route stock crew diagram platform kernel"
    })
    void capabilitiesPointDownwards(String upper, String lower) {
        classes()
                .that()
                .resideInAPackage(ROOT + upper + "..")
                .and()
                .resideOutsideOfPackage("..web..")
                .should()
                .onlyDependOnClassesThat(
                        resideOutsideOfPackage("org.crosshead..").or(resideInAnyPackage(packages("", lower))))
                .because("a capability may be understood from what lies below it")
                .check(ALL);
    }

    @Test
    void nobodyUsesPages() {
        noClasses()
                .that()
                .resideOutsideOfPackage("..web..")
                .should()
                .dependOnClassesThat(resideInAPackage("org.crosshead..web.."))
                .because("rules must not hang on pages")
                .check(ALL);
    }

    @Test
    void nobodyUsesTheExchange() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.crosshead.exchange..")
                .should()
                .dependOnClassesThat(resideInAPackage("org.crosshead.exchange.."))
                .because("bringing data in and out uses the capabilities and is used by none")
                .check(ALL);
    }

    @Test
    void capabilitiesFormNoCircle() {
        slices().matching("org.crosshead.(*)..")
                .should()
                .beFreeOfCycles()
                .because("a circle cannot be read from any end")
                .check(ALL);
    }

    @Test
    void onlyDiagramKnowsTheChartLibraries() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.crosshead.diagram..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("org.jfree..", "org.apache.batik.."))
                .because("another chart library must cost one package")
                .check(ALL);
    }

    @Test
    void controllersStandInWeb() {
        classes()
                .that()
                .areAnnotatedWith(Controller.class)
                .should()
                .resideInAPackage("org.crosshead..web..")
                .because("HTTP stays in web")
                .check(ALL);
    }

    @Test
    void fieldsAreNotInjected() {
        noFields()
                .should()
                .beAnnotatedWith(Autowired.class)
                .because("a class must say in its constructor what it needs")
                .check(ALL);
    }

    private static String[] packages(String prefix, String names) {
        return Stream.of(names.split(" ", -1))
                .map(name -> ROOT + prefix + name + "..")
                .toArray(String[]::new);
    }
}
