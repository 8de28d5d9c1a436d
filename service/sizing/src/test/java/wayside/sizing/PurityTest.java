package wayside.sizing;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessField;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.conditions.ArchConditions.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The core is pure: the same question has the same answer. Each rule is seen to fail on a planted violation. */
class PurityTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("wayside.sizing");

    private static final ArchRule NO_CLOCK = noClasses()
            .should(callMethodWhere(named("java\\.time\\..*\\.now|java\\.lang\\.System\\.(currentTimeMillis|nanoTime)"))
                    .or(dependOnClassesThat(type(java.time.Clock.class))));

    private static final ArchRule NO_RANDOM = noClasses()
            .should(callMethodWhere(named("java\\.lang\\.(Math|StrictMath)\\.random"))
                    .or(dependOnClassesThat(
                            nameMatching("java\\.util\\.(Random|SplittableRandom|UUID)|java\\.security\\..*"
                                    + "|java\\.util\\.(random|concurrent)\\..*Random.*"))));

    private static final ArchRule NO_CONSOLE = noClasses()
            .should(accessField(System.class, "out")
                    .or(accessField(System.class, "err"))
                    .or(accessField(System.class, "in")));

    private static final ArchRule NO_FILE = noClasses()
            .should(dependOnClassesThat(nameMatching("java\\.io\\.(File.*|RandomAccessFile)|java\\.nio\\.file\\..*")));

    private static final ArchRule A_LAYER_FOR_EACH = classes().should(resideInAnyPackage(layers()));

    private static String[] layers() {
        List<String> rooms = List.of(
                "brief",
                "trace",
                "reference",
                "sizes",
                "demand",
                "solar",
                "solar.plane",
                "solar.sky",
                "solar.array",
                "solar.epw",
                "storage",
                "charging",
                "inverter",
                "wiring",
                "budget",
                "journey",
                "ledger",
                "system",
                "system.graph",
                "endurance",
                "chance",
                "laws",
                "sizes",
                "recommendation",
                "yield",
                "recharge");
        String[] packages = rooms.stream().map(room -> "wayside.sizing." + room).toArray(String[]::new);
        String[] all = Arrays.copyOf(packages, packages.length + 1);
        all[packages.length] = "wayside.sizing";
        return all;
    }

    private static DescribedPredicate<JavaMethodCall> named(String pattern) {
        return DescribedPredicate.describe(
                "a call of " + pattern,
                call -> (call.getTargetOwner().getName() + '.' + call.getName()).matches(pattern));
    }

    private static ArchRule rule(String name) {
        return switch (name) {
            case "clock" -> NO_CLOCK;
            case "random" -> NO_RANDOM;
            case "console" -> NO_CONSOLE;
            case "file" -> NO_FILE;
            default -> A_LAYER_FOR_EACH;
        };
    }

    @ParameterizedTest
    @CsvSource({"clock", "random", "console", "file", "layer"})
    void theCoreKeepsTheRule(String name) {
        rule(name).check(CORE);
    }

    @ParameterizedTest
    @CsvSource({
        "clock, Clock",
        "clock, Milliseconds",
        "random, Dice",
        "random, Generator",
        "console, Console",
        "file, OwnFile",
        "layer, Dice"
    })
    void theRuleFailsWhereItIsBroken(String name, String planted) throws ClassNotFoundException {
        JavaClasses broken =
                new ClassFileImporter().importClasses(Class.forName("wayside.sizing.planted.Impure$" + planted));
        assertThat(rule(name).evaluate(broken).hasViolation()).isTrue();
    }

    @Test
    void looksAtTheWholeCore() {
        assertThat(CORE).hasSizeGreaterThan(200);
    }
}
