package wayside.server.contract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wayside.server.binding.Coded;
import wayside.server.operation.rechargetime.SourceCode;
import wayside.server.operation.shared.ObjectiveCode;
import wayside.server.operation.shared.RuleSetCode;
import wayside.server.operation.shared.TierCode;
import wayside.server.words.English;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.Compartment;
import wayside.sizing.laws.Law;
import wayside.sizing.solar.sky.SkyBasis;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.DeviceKind;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Basis;
import wayside.sizing.trace.MessageCode;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Slot;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.GovernedBy;

/** The lists of codes that texts of answers are taken from, read off the core. */
final class CodeLists {
    private static final Map<String, List<String>> LISTS = Map.ofEntries(
            list("severity", Severity.values(), Severity::code),
            list("basis", Basis.values(), Basis::code),
            list("unit", Unit.values(), Unit::symbol),
            list("chemistry", Chemistry.values(), Chemistry::code),
            list("node", NodeKind.values(), NodeKind::code),
            list("device", DeviceKind.values(), DeviceKind::code),
            list("cable-place", CablePlace.values(), CablePlace::code),
            list("governed-by", GovernedBy.values(), GovernedBy::code),
            list("sky-basis", SkyBasis.values(), SkyBasis::code),
            list("operation", NamedOperation.Kind.values(), NamedOperation.Kind::code),
            list("law-verdict", Law.Verdict.values(), Law.Verdict::code),
            list("source", SourceCode.values(), Coded::code),
            list("objective", ObjectiveCode.values(), Coded::code),
            list("compartment", Compartment.values(), Compartment::code),
            list("tier", TierCode.values(), Coded::code),
            list("rules", RuleSetCode.values(), Coded::code),
            Map.entry("step-kind", List.of("given", "default", "convention", "looked-up", "computed")),
            Map.entry("cold-voltage-method", List.of("coefficient", "nec-690-7-a")),
            Map.entry("residual-current-device", List.of("rcd", "gfci")),
            Map.entry("controller-type", List.of("mppt")));

    private CodeLists() {}

    private static <T> Map.Entry<String, List<String>> list(String name, T[] values, Function<T, String> code) {
        return Map.entry(name, Arrays.stream(values).map(code).toList());
    }

    /**
     * The codes of these lists.
     *
     * @throws IllegalArgumentException when there is no such list
     */
    static List<String> codes(String... lists) {
        List<String> codes = new ArrayList<>();
        for (String list : lists) {
            List<String> own =
                    LISTS.getOrDefault(list, messages(list).keySet().stream().toList());
            if (own.isEmpty()) {
                throw new IllegalArgumentException("No list of codes " + list);
            }
            codes.addAll(own);
        }
        return codes;
    }

    /** What each message of these kinds says and which parameters it has, by code; empty for lists of other codes. */
    static Map<String, Object> messages(String... kinds) {
        Map<String, Object> messages = new LinkedHashMap<>();
        for (MessageCode code : MessageCode.all()) {
            if (List.of(kinds).contains(code.kind())) {
                messages.put(code.code(), told(code));
            }
        }
        return messages;
    }

    /** In this order always: the contract is the same bytes in every run. */
    private static Map<String, Object> told(MessageCode code) {
        Map<String, Object> message = new LinkedHashMap<>();
        message.put("kind", code.kind());
        message.put("text", English.pattern(code));
        message.put("parameters", parameters(code));
        return message;
    }

    private static Map<String, Object> parameters(MessageCode code) {
        Map<String, Object> parameters = new LinkedHashMap<>();
        for (Slot slot : code.slots()) {
            Map<String, Object> takes = new LinkedHashMap<>();
            takes.put("holds", slot.kind().code());
            slot.unit().ifPresent(unit -> takes.put("unit", unit.symbol()));
            takes.put("always", slot.needed());
            parameters.put(slot.name(), takes);
        }
        return parameters;
    }
}
