package wayside.sizing.trace;

/** How a value follows from others: an expression that is evaluated, or an operation that is named. */
public sealed interface Method permits Expression, NamedOperation {
    Source source();
}
