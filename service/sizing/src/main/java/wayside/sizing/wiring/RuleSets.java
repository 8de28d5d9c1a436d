package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;

/** The rule sets that a request may name. */
public final class RuleSets {
    public static final RuleSet DEFAULT = new AbycE11Rules();
    private static final List<RuleSet> ALL = List.of(DEFAULT, new NecRules());

    private RuleSets() {}

    public static List<RuleSet> all() {
        return ALL;
    }

    public static List<String> codes() {
        return ALL.stream().map(RuleSet::code).toList();
    }

    public static Optional<RuleSet> find(String code) {
        return ALL.stream().filter(rules -> rules.code().equals(code)).findFirst();
    }

    /** @throws IllegalArgumentException for a code that no set has */
    public static RuleSet of(String code) {
        return find(code)
                .orElseThrow(() -> new IllegalArgumentException(
                        "No rule set '" + code + "'; there are " + String.join(", ", codes())));
    }
}
