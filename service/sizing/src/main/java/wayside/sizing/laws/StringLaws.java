package wayside.sizing.laws;

import java.util.List;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.LawCode;

/**
 * A string against its controller: on the coldest morning no more than the controller stands, on the hottest roof at least the
 * highest charging voltage of the bank. Source of the cold end: NFPA 70 690.7(A); the hot end is common practice, no source.
 */
final class StringLaws {
    private StringLaws() {}

    static List<Law> of(SizedSystem system) {
        return system.array()
                .map(array -> List.of(
                        Law.of(
                                LawCode.CONTROLLER_VOLTAGE,
                                array.strings().coldOpenCircuitV(),
                                array.strings().controllerMaximumV()),
                        Law.of(
                                LawCode.STRING_CHARGES,
                                system.chargingVoltageV(),
                                array.strings().hotWorkingV())))
                .orElse(List.of());
    }
}
