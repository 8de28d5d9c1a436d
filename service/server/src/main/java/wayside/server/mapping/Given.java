package wayside.server.mapping;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** From fields that may be left open to the optionals of the brief. */
final class Given {
    private Given() {}

    static OptionalDouble number(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    static OptionalInt whole(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }

    static double numberOr(@Nullable Double value, double otherwise) {
        return value == null ? otherwise : value;
    }

    static <A, B> Optional<B> map(@Nullable A value, Function<A, B> reader) {
        return value == null ? Optional.empty() : Optional.of(reader.apply(value));
    }
}
