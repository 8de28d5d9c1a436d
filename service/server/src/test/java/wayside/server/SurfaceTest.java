package wayside.server;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;
import wayside.sizing.demand.AmbientDuty;

/** The server sees the core's entry points, what they take and what they return: it calculates nothing itself. */
class SurfaceTest {
    private static final String CORE = "wayside.sizing";

    private static final ArchRule NO_CALCULATOR = classes()
            .should(new ArchCondition<>("call no calculator of the core") {
                @Override
                public void check(JavaClass from, ConditionEvents events) {
                    from.getMethodCallsFromSelf().stream()
                            .filter(SurfaceTest::isCalculation)
                            .forEach(call -> events.add(SimpleConditionEvent.violated(call, call.getDescription())));
                }
            });

    private static final ArchRule ONLY_WHAT_IS_SHOWN = classes()
            .should(new ArchCondition<>("know no class of static methods in the core's rooms") {
                @Override
                public void check(JavaClass from, ConditionEvents events) {
                    from.getDirectDependenciesFromSelf().stream()
                            .filter(dependency -> isHidden(dependency.getTargetClass()))
                            .map(Dependency::getDescription)
                            .forEach(text -> events.add(SimpleConditionEvent.violated(from, text)));
                }
            });

    /** A static method of a room that is neither a value's own factory in brief or trace nor an entry point. */
    private static boolean isCalculation(JavaMethodCall call) {
        JavaClass owner = call.getTargetOwner();
        boolean isStatic = call.getTarget()
                .resolveMember()
                .map(method -> method.getModifiers().contains(JavaModifier.STATIC))
                .orElse(false);
        return isRoom(owner) && isStatic && !owner.isEnum();
    }

    /** A class of static methods alone. */
    private static boolean isHidden(JavaClass type) {
        return isRoom(type)
                && !type.isInterface()
                && !type.isEnum()
                && type.getMethods().stream()
                        .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                        .allMatch(method -> method.getModifiers().contains(JavaModifier.STATIC));
    }

    /** Where the core calculates: not at its entry points, in what is asked and explained, or where files are read. */
    private static boolean isRoom(JavaClass type) {
        String name = type.getPackageName();
        return name.startsWith(CORE + '.')
                && !name.equals(CORE + ".brief")
                && !name.equals(CORE + ".trace")
                && !name.equals(CORE + ".reference")
                && !name.endsWith(".epw")
                && !type.getSimpleName().equals("RuleSets");
    }

    private static JavaClasses server() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("wayside");
    }

    @Test
    void theServerCallsNoCalculator() {
        NO_CALCULATOR.check(server().that(resideInAPackage("wayside.server..")));
    }

    @Test
    void theServerKnowsOnlyWhatTheCoreShows() {
        ONLY_WHAT_IS_SHOWN.check(server().that(resideInAPackage("wayside.server..")));
    }

    @Test
    void theRulesFailWhereAWriterCalculates() {
        JavaClasses planted = new ClassFileImporter().importClasses(CalculatingWriter.class, AmbientDuty.class);
        assertThat(NO_CALCULATOR.evaluate(planted).hasViolation()).isTrue();
        assertThat(ONLY_WHAT_IS_SHOWN.evaluate(planted).hasViolation()).isTrue();
    }

    /** Planted. */
    static final class CalculatingWriter {
        double write() {
            return AmbientDuty.interpolate(List.of(), 20);
        }
    }
}
