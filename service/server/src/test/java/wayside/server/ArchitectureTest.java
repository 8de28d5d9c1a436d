package wayside.server;

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

/** The arrows of the house. */
@AnalyzeClasses(packages = "wayside.server", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule theArrowsPointOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("app")
            .definedBy("wayside.server")
            .layer("http")
            .definedBy("..server.http..")
            .layer("intake")
            .definedBy("..server.intake..")
            .layer("operation")
            .definedBy("..server.operation..")
            .layer("answer")
            .definedBy("..server.answer..")
            .layer("binding")
            .definedBy("..server.binding..")
            .layer("contract")
            .definedBy("..server.contract..")
            .layer("words")
            .definedBy("..server.words..")
            .layer("problem")
            .definedBy("..server.problem..")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("http")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("intake")
            .mayOnlyBeAccessedByLayers("http", "app")
            .whereLayer("contract")
            .mayOnlyBeAccessedByLayers("http", "app")
            .whereLayer("operation")
            .mayOnlyBeAccessedByLayers("http", "contract")
            .whereLayer("answer")
            .mayOnlyBeAccessedByLayers("http", "operation", "contract")
            .whereLayer("binding")
            .mayOnlyBeAccessedByLayers("http", "operation", "contract")
            .whereLayer("words")
            .mayOnlyBeAccessedByLayers("answer", "contract")
            .whereLayer("problem")
            .mayOnlyBeAccessedByLayers("http", "intake", "answer", "binding", "contract");

    @ArchTest
    static final ArchRule theBinderKnowsNoOperation = noClasses()
            .that()
            .resideInAPackage("..server.binding..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("wayside.sizing..", "..server.operation..", "..server.answer.."));

    @ArchTest
    static final ArchRule noCircles =
            slices().matching("wayside.server.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule noCirclesOfOperations =
            slices().matching("wayside.server.operation.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule whatIsSharedKnowsNoOperation = noClasses()
            .that()
            .resideInAPackage("..operation.shared..")
            .should()
            .dependOnClassesThat(
                    resideInAPackage("..server.operation..").and(resideOutsideOfPackage("..operation.shared..")));

    @ArchTest
    static final ArchRule onlyTheApiDescribesItself = noClasses()
            .that()
            .resideOutsideOfPackages("..server.operation..", "..server.answer..", "..server.contract..")
            .should()
            .dependOnClassesThat(resideInAPackage("io.swagger.v3.oas.annotations.."));

    @ArchTest
    static final ArchRule theApiKnowsNothingOfTheCore = noClasses()
            .that()
            .haveNameMatching(".*(Request|Response|Input|View|Code)")
            .and()
            .resideInAnyPackage("..server.operation..", "..server.answer..")
            .should()
            .dependOnClassesThat(resideInAPackage("wayside.sizing.."));

    @ArchTest
    static final ArchRule onlyHttpKnowsTheServer = noClasses()
            .that()
            .resideOutsideOfPackages("..server.http..", "wayside.server")
            .should()
            .dependOnClassesThat(resideInAPackage("io.javalin.."));

    @ArchTest
    static final ArchRule theContractIsMadeAtBuildTime = noClasses()
            .that()
            .resideOutsideOfPackage("..server.contract..")
            .and()
            .doNotHaveSimpleName("ContractFiles")
            .should()
            .dependOnClassesThat(resideInAPackage("io.swagger.v3.oas.models.."));

    @ArchTest
    static final ArchRule requestsAndResponsesAreRecords = classes()
            .that()
            .resideInAnyPackage("..server.operation..", "..server.answer..")
            .and()
            .areAnnotatedWith(io.swagger.v3.oas.annotations.media.Schema.class)
            .should()
            .beRecords();
}
