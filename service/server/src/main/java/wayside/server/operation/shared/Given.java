package wayside.server.operation.shared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import wayside.sizing.brief.At;

/** From fields that may be left open to the optionals of the brief. */
public final class Given {
    private Given() {}

    public static OptionalDouble number(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    public static OptionalInt whole(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }

    static OptionalLong seed(@Nullable Integer value) {
        return value == null ? OptionalLong.empty() : OptionalLong.of(value);
    }

    /** An object that stands there, if it was given. */
    public static <A, B> Optional<B> map(At at, @Nullable A value, BiFunction<At, A, B> reader) {
        return value == null ? Optional.empty() : Optional.of(reader.apply(at, value));
    }

    /** A list that stands there, each entry with its own place; empty when it was not given. */
    public static <A, B> List<B> list(At at, @Nullable List<A> values, BiFunction<At, A, B> reader) {
        if (values == null) {
            return List.of();
        }
        List<B> read = new ArrayList<>();
        for (A value : values) {
            read.add(reader.apply(at.entry(read.size()), value));
        }
        return read;
    }

    public static <A, B> Optional<B> map(@Nullable A value, Function<A, B> reader) {
        return value == null ? Optional.empty() : Optional.of(reader.apply(value));
    }
}
