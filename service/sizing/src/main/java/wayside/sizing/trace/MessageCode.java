package wayside.sizing.trace;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a message says, without words: a constant of one of the closed lists. */
public sealed interface MessageCode
        permits LawCode,
                CautionCode,
                ShortfallCode,
                ChangeCode,
                AdviceCode,
                WorstRunCode,
                PowerUnitReason,
                FuseRefusal {
    /** Of the constant. */
    String name();

    /** What it is a message of, in kebab-case: {@code caution}. Codes are unique within one kind. */
    String kind();

    /** The parameters of its messages, in the order of the sentence. */
    List<Slot> slots();

    /** Stable, kebab-case: {@code cold-charging}. */
    default String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    default Optional<Slot> findSlot(String name) {
        for (Slot slot : slots()) {
            if (slot.name().equals(name)) {
                return Optional.of(slot);
            }
        }
        return Optional.empty();
    }

    /** Every message that the core can give. */
    static List<MessageCode> all() {
        return Stream.<MessageCode[]>of(
                        LawCode.values(),
                        CautionCode.values(),
                        ShortfallCode.values(),
                        ChangeCode.values(),
                        AdviceCode.values(),
                        WorstRunCode.values(),
                        PowerUnitReason.values(),
                        FuseRefusal.values())
                .flatMap(Stream::of)
                .toList();
    }
}
