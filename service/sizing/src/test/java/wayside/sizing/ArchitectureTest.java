package wayside.sizing;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows of the house. */
@AnalyzeClasses(packages = "wayside.sizing", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String[] SUBJECTS = {
        "..demand..", "..solar..", "..storage..", "..charging..", "..inverter..", "..wiring.."
    };

    @ArchTest
    static final ArchRule theTraceStandsOnNothing = classes()
            .that()
            .resideInAPackage("..trace..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage("java..", "wayside.sizing.trace"));

    @ArchTest
    static final ArchRule theBriefKnowsNothing = classes()
            .that()
            .resideInAPackage("..brief..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage("java..", "wayside.sizing.brief"));

    @ArchTest
    static final ArchRule theTablesKnowOnlyTheTrace = classes()
            .that()
            .resideInAPackage("..reference..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage("java..", "wayside.sizing.reference", "wayside.sizing.trace"));

    @ArchTest
    static final ArchRule noSubjectLooksUp = noClasses()
            .that()
            .resideInAnyPackage(SUBJECTS)
            .should()
            .dependOnClassesThat(
                    resideInAnyPackage("wayside.sizing", "..endurance..", "..selection..", "..comparison.."));

    @ArchTest
    static final ArchRule theLedgerKnowsNoDoor = noClasses()
            .that()
            .resideInAPackage("..endurance..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("wayside.sizing", "..selection..", "..comparison.."));

    @ArchTest
    static final ArchRule noCircles =
            slices().matching("wayside.sizing.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule theCoreHasNoClockNoLogAndNoNetwork = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "java.net..",
                    "java.nio.file..",
                    "java.util.logging..",
                    "java.sql..",
                    "org.slf4j..",
                    "com.fasterxml.."));
}
