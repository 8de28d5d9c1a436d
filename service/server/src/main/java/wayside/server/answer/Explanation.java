package wayside.server.answer;

/** Which figures of an answer come with the way to them. */
public sealed interface Explanation {
    Explanation ALL = new All();
    Explanation NONE = new None();

    /** Whether the figure that stands at this JSON Pointer is asked for. */
    boolean covers(String pointer);

    /** Every figure. */
    record All() implements Explanation {
        @Override
        public boolean covers(String pointer) {
            return true;
        }
    }

    /** No figure. */
    record None() implements Explanation {
        @Override
        public boolean covers(String pointer) {
            return false;
        }
    }

    /** A figure, or all that stand in an object or list. */
    record Of(String at) implements Explanation {
        @Override
        public boolean covers(String pointer) {
            return pointer.equals(at) || pointer.startsWith(at + '/');
        }
    }
}
