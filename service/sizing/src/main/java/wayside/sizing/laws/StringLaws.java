package wayside.sizing.laws;

import java.util.List;
import wayside.sizing.system.ArrayStrings;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/**
 * A string against its controller: on the coldest morning no more than the controller stands; on the hottest roof at least the
 * highest charging voltage of the bank, which a controller wants half a volt above, and without load at least the resting battery
 * and the margin with which it starts. A lone module on a 12 V bank needs no margin: controllers of
 * that bus are made for it. Source of the cold end: NFPA 70
 * 690.7(A); the hot end is common practice, no source, and a caution.
 */
final class StringLaws {
    private static final Expression TO_CHARGE =
            Expression.commonPractice("V = V_b + d").with("d", 0.5, Unit.VOLT);
    private static final Expression TO_START = Expression.commonPractice("V = V_12 V_bus / 12 + d")
            .with("V_12", 13.4, Unit.VOLT)
            .with("d", 5, Unit.VOLT);
    private static final Expression ALONE_TO_CHARGE = Expression.commonPractice("V = V_b");
    private static final Expression ALONE_TO_START =
            Expression.commonPractice("V = V_12 V_bus / 12").with("V_12", 13.4, Unit.VOLT);
    private static final double LONE_BUS_V = 12;
    private static final Expression HOT_OPEN = Expression.commonPractice("V = V_hot V_oc / V_mp");

    private StringLaws() {}

    static List<Law> of(SizedSystem system) {
        return system.array()
                .map(array -> List.of(
                        Law.of(
                                LawCode.CONTROLLER_VOLTAGE,
                                array.strings().coldOpenCircuitV(),
                                array.strings().controllerMaximumV()),
                        charges(system, array.strings()),
                        starts(system, array.strings())))
                .orElse(List.of());
    }

    private static Law charges(SizedSystem system, ArrayStrings strings) {
        Expression wanted = isLone(system, strings) ? ALONE_TO_CHARGE : TO_CHARGE;
        Derived asked = wanted.value(
                "string: working voltage that the controller wants",
                Unit.VOLT,
                system.chargingVoltageV().as("V_b"));
        return withCare(
                Law.of(LawCode.STRING_CHARGES, asked, strings.hotWorkingV()), CautionCode.STRING_HARDLY_CHARGES);
    }

    /** The open voltage falls with heat no more steeply than the working voltage does. */
    private static Law starts(SizedSystem system, ArrayStrings strings) {
        Expression wanted = isLone(system, strings) ? ALONE_TO_START : TO_START;
        Derived asked = wanted.value(
                "string: voltage at which the controller starts",
                Unit.VOLT,
                system.site().busVoltageV().as("V_bus"));
        Derived open = HOT_OPEN.value(
                "string: open-circuit voltage on the hottest roof",
                Unit.VOLT,
                strings.hotWorkingV().as("V_hot"),
                strings.module().openCircuitV().as("V_oc"),
                strings.module().workingV().as("V_mp"));
        return withCare(Law.of(LawCode.STRING_STARTS, asked, open), CautionCode.STRING_MAY_NOT_START);
    }

    private static boolean isLone(SizedSystem system, ArrayStrings strings) {
        return strings.seriesCount().value() == 1 && system.site().busVoltageV().value() == LONE_BUS_V;
    }

    private static Law withCare(Law law, CautionCode code) {
        return law.asked().value() <= law.allowed().value()
                ? law
                : law.with(Caution.commonPractice(
                        Severity.WARNING,
                        code,
                        Parameter.number("asked", law.asked()),
                        Parameter.number("allowed", law.allowed())));
    }
}
