package wayside.sizing;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.endurance.EnduranceQuestion;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.WeatherSource;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.system.Site;
import wayside.sizing.trace.Derived;

/** The arrows of the house. */
@AnalyzeClasses(packages = "wayside.sizing", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String DOORS = "wayside.sizing";
    private static final String[] SUBJECTS = {
        "..demand..", "..solar..", "..storage..", "..charging..", "..inverter..", "..wiring.."
    };
    private static final String[] BELOW_THE_SUBJECTS = {
        "java..", "net.e175.klaus..", "..brief..", "..trace..", "..reference..", "..sizes.."
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
    static final ArchRule theArrowsPointDown = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("doors")
            .definedBy(DOORS)
            .layer("recommendation")
            .definedBy("..recommendation..")
            .layer("chance")
            .definedBy("..chance..")
            .layer("endurance")
            .definedBy("..endurance..")
            .layer("laws")
            .definedBy("..laws..")
            .layer("system")
            .definedBy("..system..")
            .layer("yield")
            .definedBy("..yield..")
            .layer("recharge")
            .definedBy("..recharge..")
            .layer("journey")
            .definedBy("..journey..")
            .layer("budget")
            .definedBy("..budget..")
            .layer("ledger")
            .definedBy("..ledger..")
            .whereLayer("doors")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("recommendation")
            .mayOnlyBeAccessedByLayers("doors")
            .whereLayer("chance")
            .mayOnlyBeAccessedByLayers("recommendation", "doors")
            .whereLayer("endurance")
            .mayOnlyBeAccessedByLayers("chance", "recommendation", "doors")
            .whereLayer("laws")
            .mayOnlyBeAccessedByLayers("endurance", "chance", "recommendation", "doors")
            .whereLayer("system")
            .mayOnlyBeAccessedByLayers("laws", "endurance", "chance", "recommendation", "doors")
            .whereLayer("yield")
            .mayOnlyBeAccessedByLayers("doors")
            .whereLayer("recharge")
            .mayOnlyBeAccessedByLayers("doors")
            .whereLayer("journey")
            .mayOnlyBeAccessedByLayers("system", "laws", "endurance", "chance", "recommendation", "doors")
            .whereLayer("budget")
            .mayOnlyBeAccessedByLayers("journey", "system", "laws", "endurance", "chance", "recommendation", "doors")
            .whereLayer("ledger")
            .mayOnlyBeAccessedByLayers("journey", "endurance", "chance", "doors");

    @ArchTest
    static final ArchRule aTripIsMadeReadyInOnePlace = noClasses()
            .that()
            .resideOutsideOfPackages("..journey..", "..budget..")
            .should()
            .callMethod(SolarMonth.class, "of", Stay.class, int.class, PanelMount.class)
            .orShould()
            .callMethod(EnergyBudget.class, "of", EnergyBrief.class, Derived.class, String.class)
            .orShould()
            .callMethod(BankPlace.class, "offsetK", BankPlacement.class);

    @ArchTest
    static final ArchRule onlyAQuestionMakesATripReady = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(Site.class.getName())
            .and()
            .doNotHaveFullyQualifiedName(EnduranceQuestion.class.getName())
            .should()
            .callMethod(Journey.class, "of", SystemBrief.class)
            .orShould()
            .callMethod(Journey.class, "of", EnduranceBrief.class, WeatherSource.class);

    @ArchTest
    static final ArchRule onlyADoorPutsAQuestion = noClasses()
            .that()
            .resideOutsideOfPackage(DOORS)
            .should()
            .callMethod(Site.class, "of", SystemBrief.class)
            .orShould()
            .callMethod(EnduranceQuestion.class, "of", EnduranceBrief.class, WeatherSource.class);

    @ArchTest
    static final ArchRule noSubjectLooksUp = classes()
            .that()
            .resideInAnyPackage(SUBJECTS)
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(BELOW_THE_SUBJECTS).or(resideInAnyPackage(SUBJECTS)));

    /** The sky's figures are measured against the sun's own geometry, so the plane is the lowest room. */
    @ArchTest
    static final ArchRule theRoomsOfTheSunAreOnStairs = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("plane")
            .definedBy("wayside.sizing.solar.plane")
            .layer("sky")
            .definedBy("wayside.sizing.solar.sky")
            .layer("array")
            .definedBy("wayside.sizing.solar.array")
            .layer("epw")
            .definedBy("wayside.sizing.solar.epw")
            .layer("months")
            .definedBy("wayside.sizing.solar")
            .whereLayer("plane")
            .mayOnlyBeAccessedByLayers("sky", "array", "epw", "months")
            .whereLayer("sky")
            .mayOnlyBeAccessedByLayers("array", "epw", "months")
            .whereLayer("array")
            .mayOnlyBeAccessedByLayers("epw", "months")
            .whereLayer("epw")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("months")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule theLedgerKnowsOnlySubjects = classes()
            .that()
            .resideInAPackage("..ledger..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(BELOW_THE_SUBJECTS)
                    .or(resideInAnyPackage(SUBJECTS))
                    .or(resideInAnyPackage("wayside.sizing.ledger")));

    @ArchTest
    static final ArchRule noChapterKnowsADoor =
            noClasses().that().resideOutsideOfPackage(DOORS).should().dependOnClassesThat(resideInAPackage(DOORS));

    @ArchTest
    static final ArchRule noDoorOpensAnother =
            classes().that().resideInAPackage(DOORS).should().onlyDependOnClassesThat(resideOutsideOfPackage(DOORS));

    @ArchTest
    static final ArchRule aDoorIsOnlyCalled = classes()
            .that()
            .resideInAPackage(DOORS)
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .haveNameMatching(".*(Sizer|Simulator)")
            .andShould()
            .bePublic()
            .andShould()
            .haveOnlyPrivateConstructors();

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
