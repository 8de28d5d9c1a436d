package wayside.sizing.brief;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Whether the answer that is worked on is still wanted. Long work asks between its parts, and ends when it is not; who asks for
 * no answer in particular always wants it. It has no part in any figure.
 */
public final class Wanted {
    private static final ThreadLocal<Wanted> HERE = ThreadLocal.withInitial(() -> new Wanted(() -> true));

    private final BooleanSupplier wanted;

    private Wanted(BooleanSupplier wanted) {
        this.wanted = wanted;
    }

    /**
     * Works while the answer is wanted.
     *
     * @param wanted asked often and from any thread, until it says no
     * @throws NoLongerWanted when it has said no
     */
    public static <T> T whileWanted(BooleanSupplier wanted, Supplier<T> work) {
        Wanted before = HERE.get();
        HERE.set(new Wanted(wanted));
        try {
            return work.get();
        } finally {
            HERE.set(before);
        }
    }

    /** The question of the work on this thread, which its helpers on other threads ask as well. */
    public static Wanted here() {
        return HERE.get();
    }

    /** @throws NoLongerWanted when the answer is not wanted any more */
    public void check() {
        if (!wanted.getAsBoolean()) {
            throw new NoLongerWanted();
        }
    }

    /** Ends work whose answer nobody wants. */
    public static final class NoLongerWanted extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NoLongerWanted() {
            super("The answer is no longer wanted", null, false, false);
        }
    }
}
